package saddlewright.rules;

import java.util.List;
import saddlewright.chart.ChartField;
import saddlewright.design.Subject;

/**
 * What a rule cannot judge for want of a charted value; unanswered is not passed.
 *
 * @param ruleId the rule that waits
 * @param field the value that is wanting
 * @param subjects what waits to be judged, the chief one first
 */
public record Question(String ruleId, ChartField field, List<Subject> subjects) {
  public Question {
    subjects = List.copyOf(subjects);
    if (subjects.isEmpty()) {
      throw new IllegalArgumentException("a question needs a subject");
    }
  }

  /** Such as "can't judge: lingual sulcus depth at 43–33 not charted". */
  public String sentence() {
    return sentence(field);
  }

  static String sentence(ChartField field) {
    return "can't judge: " + field.words() + " not charted";
  }
}
