package saddlewright.desktop.sheet.handles;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Tooth;
import saddlewright.design.Component;
import saddlewright.design.DesignEdit;
import saddlewright.design.OtherTooth;
import saddlewright.desktop.Words;
import saddlewright.layout.Measure;
import saddlewright.rules.Situation;

/** What stands on a tooth taken as a whole, to be put on another. */
public final class BodyHandle {
  private BodyHandle() {}

  /**
   * The handle.
   *
   * @param chief the component that is grasped
   * @param along all that is moved with it; what does not stand on the same tooth stays
   */
  public static Optional<Handle> of(Situation s, Component chief, List<Component> along) {
    if (chief.teeth().size() != 1 || OtherTooth.of(chief, chief.teeth().get(0)).isEmpty()) {
      return Optional.empty();
    }
    Tooth from = chief.teeth().get(0);
    List<Component> parts =
        along.stream().filter(c -> c.teeth().equals(chief.teeth())).distinct().toList();
    List<Stop> stops = new ArrayList<>();
    int now = 0;
    for (Tooth t : Tooth.in(s.arch())) {
      if (t == from) {
        now = stops.size();
      } else if (!s.chart().stands(t)) {
        continue;
      }
      List<DesignEdit> edits = new ArrayList<>();
      if (t != from) {
        for (Component c : parts) {
          OtherTooth.of(c, t).ifPresent(o -> edits.add(new DesignEdit.Change(o)));
        }
      }
      stops.add(
          new Stop(
              s.form().tooth(t).centre(),
              Words.of("handle.on-tooth", t),
              new DesignEdit.Several(edits)));
    }
    return Optional.of(
        new Handle(
            "body",
            Words.of("handle.body"),
            s.arch(),
            chief.id(),
            new Steps(stops, now, false),
            List.of(
                Gauge.of("cast-arms-are-long-enough", Measure.ARM_LENGTH),
                Gauge.of("tips-end-in-undercuts"))));
  }
}
