package saddlewright.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.ConnectorForm;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Plating;
import saddlewright.design.ReciprocalArm;

/**
 * The parts that hold a clasped tooth against the push of its retentive arm.
 *
 * @param clasp the clasp
 * @param means what opposes it, in words; empty when nothing does
 * @param parts the components that do it; none for a form that holds its own tooth
 */
public record Reciprocation(Clasp clasp, List<String> means, List<Component> parts) {
  public Reciprocation {
    means = List.copyOf(means);
    parts = List.copyOf(parts);
  }

  public static Reciprocation of(Situation s, Clasp clasp) {
    List<String> means = new ArrayList<>();
    List<Component> parts = new ArrayList<>();
    Face opposite = clasp.tip().face().opposite();
    if (clasp.form().isSelfReciprocating()) {
      means.add("its own form");
    }
    for (Component c : s.design().components()) {
      if (c instanceof ReciprocalArm a && a.tooth() == clasp.tooth() && a.face() == opposite) {
        means.add("a reciprocal arm");
        parts.add(c);
      } else if (opposite == Face.LINGUAL && covers(c, clasp.tooth())) {
        means.add("the " + Naming.of(c));
        parts.add(c);
      } else if (c instanceof GuidePlate p && p.tooth() == clasp.tooth() && hasOpposedStrut(s, p)) {
        means.add("a guide plate with a minor connector");
        parts.add(c);
      }
    }
    return new Reciprocation(clasp, means, parts);
  }

  private static boolean covers(Component c, Tooth tooth) {
    if (c instanceof Plating p) {
      return p.span().contains(tooth);
    }
    return c instanceof MajorConnector m
        && m.span().contains(tooth)
        && (m.form() == ConnectorForm.LINGUAL_PLATE
            || m.form() == ConnectorForm.DENTAL_BAR
            || m.form() == ConnectorForm.CONTINUOUS_BAR);
  }

  /** The action of an RPI unit: plate at one end, strut in the embrasure at the other (Krol). */
  private static boolean hasOpposedStrut(Situation s, GuidePlate plate) {
    End other = plate.end().opposite();
    return s.design().stream(MinorConnector.class)
        .anyMatch(
            m ->
                m.tooth() == plate.tooth()
                        && (m.place() == MinorConnector.embrasure(other)
                            || m.place() == MinorConnector.Place.LINGUAL_FACE)
                    || plate.tooth().neighbour(other).equals(Optional.of(m.tooth()))
                        && m.place() == MinorConnector.embrasure(other.opposite()));
  }

  public boolean isGiven() {
    return !means.isEmpty();
  }
}
