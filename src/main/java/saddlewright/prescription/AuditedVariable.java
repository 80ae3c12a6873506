package saddlewright.prescription;

import saddlewright.design.ArchDesign;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.MajorConnector;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;

/**
 * One of the four variables by which published audits weigh a prescription: saddles, support,
 * retention and connectors (C. D. Lynch and P. F. Allen, 2003; of 122 written instructions, twelve
 * gave all four).
 */
public enum AuditedVariable {
  SADDLES(Saddle.class, "no saddle"),
  SUPPORT(Rest.class, "no support: no rest is designed"),
  RETENTION(Clasp.class, "no retention: no clasp is designed"),
  CONNECTORS(MajorConnector.class, "no major connector");

  private final Class<? extends Component> kind;
  private final String lacking;

  AuditedVariable(Class<? extends Component> kind, String lacking) {
    this.kind = kind;
    this.lacking = lacking;
  }

  /** Whether a design says anything of it. */
  public boolean isIn(ArchDesign design) {
    return design.stream(kind).findAny().isPresent();
  }

  /** What a design without it has, such as "no major connector". */
  public String lacking() {
    return lacking;
  }
}
