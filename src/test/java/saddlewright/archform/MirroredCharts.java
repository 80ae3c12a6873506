package saddlewright.archform;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import saddlewright.chart.ArchChart;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.SoftTissues.Torus;
import saddlewright.chart.ToothFindings;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;

/** Charts with the patient's right and left exchanged. */
public final class MirroredCharts {
  private MirroredCharts() {}

  public static ArchChart mirrored(ArchChart chart) {
    Map<Tooth, ToothFindings> teeth = new EnumMap<>(Tooth.class);
    chart.teeth().forEach((t, f) -> teeth.put(t.mirrored(), f));
    SoftTissues s = chart.softTissues();
    Map<Side, SoftTissues.RidgeState> ridges = new EnumMap<>(Side.class);
    s.ridges().forEach((side, r) -> ridges.put(side == Side.RIGHT ? Side.LEFT : Side.RIGHT, r));
    Set<Tooth> frena = EnumSet.noneOf(Tooth.class);
    s.frena().forEach(t -> frena.add(t.mirrored()));
    Set<Torus> tori = EnumSet.noneOf(Torus.class);
    s.tori()
        .forEach(
            t ->
                tori.add(
                    switch (t) {
                      case PALATAL -> Torus.PALATAL;
                      case MANDIBULAR_LEFT -> Torus.MANDIBULAR_RIGHT;
                      case MANDIBULAR_RIGHT -> Torus.MANDIBULAR_LEFT;
                    }));
    return new ArchChart(
        chart.arch(),
        teeth,
        new SoftTissues(
            byTooth(s.lingualDepth()),
            byTooth(s.buccalDepth()),
            byTooth(s.tissueUndercut()),
            frena,
            s.highLingualFrenum(),
            tori,
            s.palate(),
            ridges,
            s.palateLimit()));
  }

  private static Map<Tooth, Double> byTooth(Map<Tooth, Double> map) {
    Map<Tooth, Double> out = new EnumMap<>(Tooth.class);
    map.forEach((t, v) -> out.put(t.mirrored(), v));
    return out;
  }
}
