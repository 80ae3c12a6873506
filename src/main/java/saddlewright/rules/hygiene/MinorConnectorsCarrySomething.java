package saddlewright.rules.hygiene;

import java.util.Optional;
import saddlewright.dentition.End;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.GuidePlate;
import saddlewright.design.MinorConnector;
import saddlewright.design.Plating;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A strut that carries nothing crosses a gingival margin for nothing. */
public final class MinorConnectorsCarrySomething implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "minor-connectors-carry-something",
          "Every minor connector carries a rest, an arm or a bar.",
          Severity.SHOULD,
          Source.read(Literature.OWALL));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    boolean bar =
        !LaidConnector.all(s, ConnectorForm.CONTINUOUS_BAR, ConnectorForm.DENTAL_BAR).isEmpty();
    for (MinorConnector m : s.design().all(MinorConnector.class)) {
      Optional<Tooth> beyond =
          m.place() == MinorConnector.Place.LINGUAL_FACE
              ? Optional.empty()
              : m.tooth()
                  .neighbour(
                      m.place() == MinorConnector.Place.MESIAL_EMBRASURE ? End.MESIAL : End.DISTAL);
      Optional<Component> carried =
          s.design().components().stream()
              .filter(MinorConnectorsCarrySomething::isCarried)
              .filter(
                  c ->
                      c.teeth().contains(m.tooth())
                          || beyond.filter(c.teeth()::contains).isPresent())
              .findFirst();
      if (carried.isPresent()) {
        on.upheld("carries the " + Naming.of(carried.get()), Subject.of(s.arch(), m));
      } else if (bar) {
        on.upheld("steadies the bar on the teeth", Subject.of(s.arch(), m));
      } else {
        on.finding(Naming.of(m), Subject.of(s.arch(), m))
            .fact("carries nothing")
            .measured("no rest or arm", "a rest, an arm or a bar")
            .remedy("Take it away", new DesignEdit.Remove(m.id()))
            .done();
      }
    }
  }

  private static boolean isCarried(Component c) {
    return c instanceof Rest
        || c instanceof ReciprocalArm
        || c instanceof GuidePlate
        || c instanceof Plating
        || c instanceof Clasp k && k.form().isOcclusallyApproaching();
  }
}
