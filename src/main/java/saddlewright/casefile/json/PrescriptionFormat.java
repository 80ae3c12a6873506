package saddlewright.casefile.json;

import saddlewright.casefile.PrescriptionDetails;

/** What the prescription says besides the design; texts that are not filled in are left out. */
final class PrescriptionFormat {
  private PrescriptionFormat() {}

  static PrescriptionDetails read(MembersIn m) {
    return new PrescriptionDetails(
        m.textOrEmpty("prescriber"),
        m.textOrEmpty("practice"),
        m.textOrEmpty("laboratory"),
        m.textOrEmpty("dateIssued"),
        m.textOrEmpty("dateRequired"),
        m.textOrEmpty("frameworkAlloy"),
        m.textOrEmpty("baseMaterial"),
        m.textOrEmpty("toothMaterial"),
        m.textOrEmpty("shade"),
        m.textOrEmpty("enclosures"),
        m.textOrEmpty("disinfection"),
        m.textOrEmpty("instructions"));
  }

  static void write(PrescriptionDetails p, MembersOut m) {
    m.textUnlessEmpty("prescriber", p.prescriber());
    m.textUnlessEmpty("practice", p.practice());
    m.textUnlessEmpty("laboratory", p.laboratory());
    m.textUnlessEmpty("dateIssued", p.dateIssued());
    m.textUnlessEmpty("dateRequired", p.dateRequired());
    m.textUnlessEmpty("frameworkAlloy", p.frameworkAlloy());
    m.textUnlessEmpty("baseMaterial", p.baseMaterial());
    m.textUnlessEmpty("toothMaterial", p.toothMaterial());
    m.textUnlessEmpty("shade", p.shade());
    m.textUnlessEmpty("enclosures", p.enclosures());
    m.textUnlessEmpty("disinfection", p.disinfection());
    m.textUnlessEmpty("instructions", p.instructions());
  }
}
