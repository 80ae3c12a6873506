package saddlewright.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.GuidePlate;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;

/**
 * The edit that lets an arm come from below where it came from above.
 *
 * <p>A bar is rooted in a saddle, so none is offered on a tooth that has no saddle beside it. At a
 * free end it brings the rest and plate that it works with.
 */
public final class BarInstead {
  private BarInstead() {}

  public static Optional<DesignEdit> of(Situation s, Clasp c) {
    if (c.form() == ClaspForm.EMBRASURE || c.tip().face() != Face.BUCCAL) {
      return Optional.empty();
    }
    return root(s, c).map(end -> edit(s, c, ReshapedClasp.fromBelow(c, end)));
  }

  private static Optional<End> root(Situation s, Clasp c) {
    return List.of(c.origin(), c.origin().opposite()).stream()
        .filter(e -> isBesideSaddle(s, c.tooth(), e))
        .findFirst();
  }

  private static boolean isBesideSaddle(Situation s, Tooth tooth, End end) {
    return tooth
        .neighbour(end)
        .filter(t -> !s.chart().stands(t))
        .flatMap(s.design()::saddleAt)
        .isPresent();
  }

  private static DesignEdit edit(Situation s, Clasp c, Clasp bar) {
    List<DesignEdit> edits = new ArrayList<>();
    edits.add(new DesignEdit.Change(bar));
    TerminalAbutment.at(s, c.tooth())
        .filter(a -> bar.form() == ClaspForm.I_BAR)
        .ifPresent(a -> edits.addAll(set(s, a)));
    return edits.size() == 1 ? edits.get(0) : new DesignEdit.Several(edits);
  }

  /** What is wanting of the rest away and the plate, and the lingual arm that they replace. */
  private static List<DesignEdit> set(Situation s, TerminalAbutment a) {
    List<DesignEdit> edits = new ArrayList<>();
    Tooth t = a.tooth();
    if (!a.isRestedAway()) {
      s.design().stream(Rest.class)
          .filter(r -> r.tooth() == t)
          .forEach(r -> edits.add(new DesignEdit.Remove(r.id())));
      edits.add(NewRest.edit(s, t, a.end().farSite()));
    }
    if (!a.hasGuidePlate(s)) {
      edits.add(new DesignEdit.Place(new GuidePlate(s.design().freshId("plate"), t, a.facing())));
    }
    s.design().stream(ReciprocalArm.class)
        .filter(r -> r.tooth() == t && r.face() == Face.LINGUAL)
        .forEach(r -> edits.add(new DesignEdit.Remove(r.id())));
    return edits;
  }
}
