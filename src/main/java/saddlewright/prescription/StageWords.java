package saddlewright.prescription;

import java.util.Locale;
import saddlewright.casefile.order.TreatmentStage;

/** Titles of stages within a sentence. */
final class StageWords {
  private StageWords() {}

  /** The first part of the title, such as "mounting, survey and design". */
  static String inside(TreatmentStage stage) {
    return inside(stage.title());
  }

  static String inside(String title) {
    String first = title.split(";", 2)[0];
    return first.substring(0, 1).toLowerCase(Locale.ROOT) + first.substring(1);
  }
}
