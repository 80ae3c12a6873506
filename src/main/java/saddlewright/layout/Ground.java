package saddlewright.layout;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import saddlewright.archform.ArchForm;
import saddlewright.archform.PlacedTooth;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;

/**
 * What a component is laid out on.
 *
 * @param form the arch form
 * @param frame gives the co-ordinates along and across it, worked out when first asked for
 * @param design the whole design
 * @param saddles the saddles already laid out; empty while that is being done
 * @param connector the major connector already laid out; absent while that is being done, or when
 *     there is none
 */
record Ground(
    ArchForm form,
    Supplier<RidgeFrame> frame,
    ArchDesign design,
    List<Laid> saddles,
    Optional<Laid> connector) {

  static Ground of(ArchForm form, Supplier<RidgeFrame> frame, ArchDesign design) {
    return new Ground(form, frame, design, List.of(), Optional.empty());
  }

  Ground withSaddles(List<Laid> laid) {
    return new Ground(form, frame, design, List.copyOf(laid), connector);
  }

  Ground withConnector(Optional<Laid> laid) {
    return new Ground(form, frame, design, saddles, laid);
  }

  RidgeFrame ridge() {
    return frame.get();
  }

  ArchChart chart() {
    return form.chart();
  }

  PlacedTooth tooth(Tooth tooth) {
    return form.tooth(tooth);
  }

  /** The next place in a direction along the arch that drift has not closed. */
  Optional<Tooth> next(Tooth from, int direction) {
    for (int p = from.place() + direction; p >= 0 && p <= 15; p += direction) {
      Tooth t = Tooth.at(form.arch(), p);
      if (!chart().isClosed(t)) {
        return Optional.of(t);
      }
    }
    return Optional.empty();
  }
}
