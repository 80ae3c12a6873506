package saddlewright.rules;

import java.util.List;
import saddlewright.chart.ChartField;
import saddlewright.design.Subject;

/**
 * A value that is not charted, with everything that waits for it.
 *
 * @param field the value
 * @param ruleIds the rules that wait, sorted
 * @param subjects what waits to be judged
 */
public record OpenQuestion(ChartField field, List<String> ruleIds, List<Subject> subjects) {
  public OpenQuestion {
    ruleIds = List.copyOf(ruleIds);
    subjects = List.copyOf(subjects);
  }

  /** Such as "can't judge: lingual sulcus depth at 43–33 not charted". */
  public String sentence() {
    return Question.sentence(field);
  }
}
