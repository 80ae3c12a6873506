package saddlewright.rules.framework;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Side;
import saddlewright.dentition.Span;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Component;
import saddlewright.design.DesignEdit;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.NewRest;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A small denture on one side can be swallowed or inhaled. */
public final class DenturesAreNotOneSided implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "dentures-are-not-one-sided",
          "A removable denture reaches both sides of the arch, joined by a connector that crosses"
              + " the midline.",
          Severity.MUST,
          Source.read(
              "reports of swallowed and inhaled one-sided dentures in the Br Dent J; "
                  + Literature.ANKARA
                  + "; "
                  + Literature.WESTERN_AUSTRALIA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public boolean isHardStop() {
    return true;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<Component> bearing =
        s.design().components().stream().filter(DenturesAreNotOneSided::bears).toList();
    Set<Side> sides = EnumSet.noneOf(Side.class);
    bearing.forEach(c -> c.teeth().forEach(t -> sides.add(t.side())));
    Optional<MajorConnector> connector = s.design().majorConnector();
    if (sides.size() == 1) {
      Side used = sides.iterator().next();
      draft(s, on, "all parts lie on the patient's " + (used == Side.RIGHT ? "right" : "left"))
          .measured("1 side", "2 sides, joined")
          .remedy("Brace it across the arch", across(s, used.opposite()))
          .done();
    } else if (sides.size() == 2 && connector.isPresent()) {
      if (connector.get().span().crossesMidline()) {
        on.upheld("joins both sides of the arch", Subject.of(s.arch(), connector.get()));
      } else {
        tooShort(s, connector.get(), on);
      }
    }
  }

  private void tooShort(Situation s, MajorConnector connector, Judging on) {
    Span wide = CrossArch.span(s, connector.form());
    draft(s, on, "its connector does not cross the midline")
        .measured("connector on 1 side", "connector on both sides")
        .remedy(
            "Carry the connector across to " + wide,
            new DesignEdit.Change(
                new MajorConnector(connector.id(), connector.form(), wide, connector.shape())))
        .done();
  }

  private static Draft draft(Situation s, Judging on, String fact) {
    return on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
        .fact(fact + ": it could be swallowed or inhaled");
  }

  /** Whatever bears on a tooth or on the ridge; a connector alone holds nothing. */
  private static boolean bears(Component c) {
    return c instanceof Saddle
        || c instanceof Rest
        || c instanceof Clasp
        || c instanceof GuidePlate;
  }

  /** A three-arm clasp on the other side and a connector that joins it. */
  private static DesignEdit across(Situation s, Side other) {
    List<DesignEdit> edits = new ArrayList<>();
    s.chart().standing().stream()
        .filter(t -> t.side() == other && !t.isIncisor() && t.position() < 8)
        .min(Comparator.comparingInt(t -> Math.abs(t.position() - 6)))
        .ifPresent(
            t -> {
              RestSite site = t.isAnterior() ? RestSite.CINGULUM : RestSite.MESIAL_OCCLUSAL;
              edits.add(NewRest.edit(s, t, site));
              edits.add(
                  new DesignEdit.Place(
                      Clasp.of(
                          s.design().freshId("clasp"),
                          t,
                          t.isMolar() ? ClaspForm.CIRCUMFERENTIAL : ClaspForm.COMBINATION,
                          Zone.DISTOBUCCAL,
                          End.MESIAL)));
              edits.add(
                  new DesignEdit.Place(
                      new ReciprocalArm(s.design().freshId("recip"), t, Face.LINGUAL, End.MESIAL)));
            });
    edits.add(CrossArch.connector(s, new DesignEdit.Several(edits).applyTo(s.design())));
    return new DesignEdit.Several(edits);
  }
}
