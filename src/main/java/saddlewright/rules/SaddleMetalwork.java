package saddlewright.rules;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Tooth;
import saddlewright.design.Backing;
import saddlewright.design.Component;
import saddlewright.design.FinishLine;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.TissueStop;

/**
 * The small metalwork that lies in one saddle.
 *
 * @param meshes open metalwork for its acrylic
 * @param finishLines where that acrylic ends against metal
 * @param stops feet on the ridge
 * @param backings metal backs of its teeth
 */
public record SaddleMetalwork(
    List<RetentionMesh> meshes,
    List<FinishLine> finishLines,
    List<TissueStop> stops,
    List<Backing> backings) {

  public SaddleMetalwork {
    meshes = List.copyOf(meshes);
    finishLines = List.copyOf(finishLines);
    stops = List.copyOf(stops);
    backings = List.copyOf(backings);
  }

  public static SaddleMetalwork of(Situation s, Saddle saddle) {
    List<RetentionMesh> meshes = new ArrayList<>();
    List<FinishLine> lines = new ArrayList<>();
    List<TissueStop> stops = new ArrayList<>();
    List<Backing> backings = new ArrayList<>();
    for (Component c : s.design().components()) {
      if (c instanceof RetentionMesh m && m.span().overlaps(saddle.span())) {
        meshes.add(m);
      } else if (c instanceof FinishLine l && l.span().overlaps(saddle.span())) {
        lines.add(l);
      } else if (c instanceof TissueStop t && saddle.span().contains(t.tooth())) {
        stops.add(t);
      } else if (c instanceof Backing b && saddle.span().contains(b.tooth())) {
        backings.add(b);
      }
    }
    return new SaddleMetalwork(meshes, lines, stops, backings);
  }

  /** Whether a tooth has a metal back. */
  public boolean backs(Tooth tooth) {
    return backings.stream().anyMatch(b -> b.tooth() == tooth);
  }
}
