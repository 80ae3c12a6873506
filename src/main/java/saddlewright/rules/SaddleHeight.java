package saddlewright.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import saddlewright.dentition.Tooth;

/**
 * The height between ridge and opposing teeth for some teeth of a saddle, as charted.
 *
 * @param low teeth with less than the school asks for mesh and acrylic
 * @param uncharted teeth where it was not measured
 * @param least the smallest height measured, in mm
 */
public record SaddleHeight(List<Tooth> low, List<Tooth> uncharted, OptionalDouble least) {
  public SaddleHeight {
    low = List.copyOf(low);
    uncharted = List.copyOf(uncharted);
  }

  public static SaddleHeight of(Situation s, List<Tooth> teeth) {
    double limit = s.profile().limit(Quantity.SADDLE_SPACE);
    List<Tooth> low = new ArrayList<>();
    List<Tooth> uncharted = new ArrayList<>();
    OptionalDouble least = OptionalDouble.empty();
    for (Tooth t : teeth) {
      Optional<Double> mm = s.chart().tooth(t).saddleSpace();
      if (mm.isEmpty()) {
        uncharted.add(t);
        continue;
      }
      if (mm.get() < limit) {
        low.add(t);
      }
      least = OptionalDouble.of(Math.min(mm.get(), least.orElse(mm.get())));
    }
    return new SaddleHeight(low, uncharted, least);
  }

  public boolean isLow() {
    return !low.isEmpty();
  }
}
