package saddlewright.layout;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import saddlewright.archform.ArchForm;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/** How deep a lower bar reaches beside each tooth, since its height is laid out flat. */
final class BarDepths {
  private BarDepths() {}

  static Map<Tooth, Double> of(ArchForm form, Laid bar) {
    Map<Tooth, Double> out = new EnumMap<>(Tooth.class);
    OptionalDouble height = bar.measure(Measure.HEIGHT);
    if (bar.centreline().isEmpty() || height.isEmpty()) {
      return out;
    }
    Path line = bar.centreline().get();
    Path margin = form.lingualMargin();
    for (Tooth t : bar.component().teeth()) {
      if (form.chart().stands(t)) {
        PlacedTooth p = form.tooth(t);
        Point neck = margin.nearest(p.rim(p.degreesAcross(Face.LINGUAL)));
        out.put(t, line.distanceTo(neck) + height.getAsDouble() / 2);
      }
    }
    return out;
  }
}
