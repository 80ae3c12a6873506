package saddlewright.design;

import java.util.Optional;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;

/** What stands on one tooth, as it would stand on another. */
public final class OtherTooth {
  private OtherTooth() {}

  /** The same component on another tooth of its arch; empty for what does not stand on one. */
  public static Optional<Component> of(Component c, Tooth to) {
    if (c instanceof Rest r) {
      return Optional.of(
          new Rest(
              r.id(), to, site(r.site(), to), form(r.form(), to), r.seat(), r.indirectRetainer()));
    }
    if (c instanceof Clasp k) {
      return Optional.of(new Clasp(k.id(), to, k.form(), k.tip(), k.origin(), k.material()));
    }
    if (c instanceof ReciprocalArm a) {
      return Optional.of(new ReciprocalArm(a.id(), to, a.face(), a.origin()));
    }
    if (c instanceof GuidePlate p) {
      return Optional.of(new GuidePlate(p.id(), to, p.end()));
    }
    if (c instanceof GuidePlane p) {
      return Optional.of(new GuidePlane(p.id(), to, p.surface()));
    }
    if (c instanceof MinorConnector m) {
      return Optional.of(new MinorConnector(m.id(), to, m.place()));
    }
    return Optional.empty();
  }

  /** The same site where the tooth has it; otherwise the usual one of its kind. */
  private static RestSite site(RestSite site, Tooth to) {
    return site.existsOn(to)
        ? site
        : to.isAnterior() ? RestSite.CINGULUM : RestSite.MESIAL_OCCLUSAL;
  }

  private static Rest.Form form(Rest.Form form, Tooth to) {
    return to.isAnterior() ? Rest.Form.STANDARD : form;
  }
}
