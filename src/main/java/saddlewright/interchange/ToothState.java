package saddlewright.interchange;

import java.util.Optional;
import saddlewright.casefile.Assessment;
import saddlewright.chart.Condition;
import saddlewright.chart.ToothFindings;
import saddlewright.dentition.Tooth;
import saddlewright.rules.Situation;

/** What an order has to say of a tooth; of several, the first that is true. */
enum ToothState {
  MISSING("missing"),
  TO_BE_EXTRACTED("to be extracted"),
  RETAINED_ROOT("retained root under the denture"),
  IMPLANT("implant"),
  UNERUPTED("unerupted"),
  ABUTMENT("standing, carries part of the denture"),
  DOUBTFUL("standing, of doubtful prognosis"),
  CROWNED("standing, crowned");

  private final String words;

  ToothState(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  /** The state of a tooth; empty when it stands and nothing is to be said of it. */
  static Optional<ToothState> of(Assessment assessment, Tooth tooth) {
    Situation situation = assessment.arch(tooth.arch());
    ToothFindings f = situation.chart().tooth(tooth);
    return switch (f.status()) {
      case MISSING -> Optional.of(MISSING);
      case TO_BE_EXTRACTED -> Optional.of(TO_BE_EXTRACTED);
      case RETAINED_ROOT -> Optional.of(RETAINED_ROOT);
      case IMPLANT -> Optional.of(IMPLANT);
      case UNERUPTED -> Optional.of(UNERUPTED);
      case STANDING ->
          situation.design().usesAsAbutment(tooth)
              ? Optional.of(ABUTMENT)
              : f.doubtful()
                  ? Optional.of(DOUBTFUL)
                  : f.condition().filter(c -> c == Condition.CROWNED).map(c -> CROWNED);
    };
  }
}
