package saddlewright.casefile.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The steps that bring a file of an earlier format up to date, one for each version: the first step
 * leads from version 1 to 2, and so on. The format in use is the one after the last step.
 *
 * <p>A change of meaning adds a step here and a sample file of the old version to the tests; a new
 * member that may be absent needs neither.
 */
record Migrations(List<UnaryOperator<ObjectNode>> steps) {
  /** A format that is in its first version. */
  static final Migrations NONE = new Migrations(List.of());

  /** Those of case files. */
  static final Migrations OF_CASES = new Migrations(List.of(PrescriptionAnswers::fromFlatTexts));

  Migrations {
    steps = List.copyOf(steps);
  }

  /** The format version that is written. */
  int current() {
    return steps.size() + 1;
  }

  /** The file in the current format. */
  ObjectNode bringUpToDate(ObjectNode file, int version) {
    ObjectNode out = file;
    for (UnaryOperator<ObjectNode> step : steps.subList(version - 1, steps.size())) {
      out = step.apply(out);
    }
    return out;
  }
}
