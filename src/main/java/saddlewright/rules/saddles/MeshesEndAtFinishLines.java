package saddlewright.rules.saddles;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import saddlewright.design.ComponentId;
import saddlewright.design.DesignEdit;
import saddlewright.design.FinishLine;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.SaddleMetalwork;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Acrylic that thins out over polished metal lifts, stains and cracks. */
public final class MeshesEndAtFinishLines implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "meshes-end-at-finish-lines",
          "Where the acrylic over a mesh meets metal there is a finish line, outside and inside.",
          Severity.SHOULD,
          Source.read(
              Literature.DENTAL_STUDY_NOTES + "; " + Literature.OKLAHOMA + " (question only)"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Saddle saddle : s.design().all(Saddle.class)) {
      SaddleMetalwork metal = SaddleMetalwork.of(s, saddle);
      if (metal.meshes().isEmpty()) {
        continue;
      }
      List<FinishLine> lines = metal.finishLines();
      Set<FinishLine.Level> levels = EnumSet.noneOf(FinishLine.Level.class);
      lines.forEach(l -> levels.add(l.level()));
      boolean both =
          levels.contains(FinishLine.Level.BOTH)
              || levels.contains(FinishLine.Level.EXTERNAL)
                  && levels.contains(FinishLine.Level.INTERNAL);
      if (lines.isEmpty()) {
        on.finding(Naming.of(saddle), Subject.of(s.arch(), saddle))
            .fact("its acrylic thins out over polished metal")
            .measured("no finish line", "a finish line outside and inside")
            .remedy(
                "Add a finish line",
                new DesignEdit.Place(
                    new FinishLine(
                        ComponentId.of("finish-1"), saddle.span(), FinishLine.Level.BOTH)))
            .done();
      } else if (!both) {
        FinishLine line = lines.get(0);
        on.finding(Naming.of(saddle), Subject.of(s.arch(), saddle))
            .fact("its acrylic has a finish line on one face only")
            .measured(
                line.level() == FinishLine.Level.EXTERNAL ? "outside only" : "inside only",
                "outside and inside")
            .weighing(Severity.CONSIDER)
            .remedy(
                "Draw it on both faces",
                new DesignEdit.Change(
                    new FinishLine(line.id(), line.span(), FinishLine.Level.BOTH)))
            .done();
      } else {
        for (FinishLine l : lines) {
          on.upheld(
              "gives the acrylic of " + Naming.of(saddle) + " a butt joint against the metal",
              Subject.of(s.arch(), l));
        }
      }
    }
  }
}
