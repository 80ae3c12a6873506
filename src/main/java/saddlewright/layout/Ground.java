package saddlewright.layout;

import java.util.Optional;
import saddlewright.archform.ArchForm;
import saddlewright.archform.PlacedTooth;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;

/**
 * What a component is laid out on: the arch form, the whole design, and the major connector already
 * laid out (absent while that is being done, or when there is none).
 */
record Ground(ArchForm form, ArchDesign design, Optional<Laid> connector) {
  ArchChart chart() {
    return form.chart();
  }

  PlacedTooth tooth(Tooth tooth) {
    return form.tooth(tooth);
  }
}
