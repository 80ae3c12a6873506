package saddlewright.design;

import saddlewright.dentition.Arch;

/** Kind of major connector. */
public enum ConnectorForm {
  PALATAL_STRAP(Arch.UPPER),
  /** Anterior and posterior straps joined at their sides, with an opening between. */
  PALATAL_RING(Arch.UPPER),
  PALATAL_PLATE(Arch.UPPER),
  HORSESHOE(Arch.UPPER),
  PALATAL_BAR(Arch.UPPER),
  LINGUAL_BAR(Arch.LOWER),
  SUBLINGUAL_BAR(Arch.LOWER),
  LINGUAL_PLATE(Arch.LOWER),
  /** A bar on the lingual surfaces of the front teeth, without one in the sulcus. */
  DENTAL_BAR(Arch.LOWER),
  /** A lingual bar with a second, slim bar on the cingula. */
  CONTINUOUS_BAR(Arch.LOWER),
  LABIAL_BAR(Arch.LOWER);

  private final Arch arch;

  ConnectorForm(Arch arch) {
    this.arch = arch;
  }

  public Arch arch() {
    return arch;
  }
}
