package saddlewright.dentition;

import java.util.Optional;

/** A place on a crown where a rest seat can lie. */
public enum RestSite {
  MESIAL_OCCLUSAL(End.MESIAL),
  DISTAL_OCCLUSAL(End.DISTAL),
  CINGULUM(null),
  MESIAL_INCISAL(End.MESIAL),
  DISTAL_INCISAL(End.DISTAL);

  private final End end;

  RestSite(End end) {
    this.end = end;
  }

  /** The end of the tooth at which the site lies; empty for the cingulum. */
  public Optional<End> end() {
    return Optional.ofNullable(end);
  }

  public boolean isOcclusal() {
    return this == MESIAL_OCCLUSAL || this == DISTAL_OCCLUSAL;
  }

  public boolean isIncisal() {
    return this == MESIAL_INCISAL || this == DISTAL_INCISAL;
  }

  /**
   * Whether a tooth of this kind has such a site at all: occlusal ones need an occlusal surface.
   */
  public boolean existsOn(Tooth tooth) {
    return isOcclusal() != tooth.isAnterior();
  }

  public static RestSite occlusal(End end) {
    return end == End.MESIAL ? MESIAL_OCCLUSAL : DISTAL_OCCLUSAL;
  }
}
