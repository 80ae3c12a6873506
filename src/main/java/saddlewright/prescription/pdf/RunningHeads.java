package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.List;
import saddlewright.casefile.Cautions;
import saddlewright.prescription.ToothWords;

/** Head and foot of every page; written last, when it is known how many pages there are. */
final class RunningHeads {
  private static final double SIZE = 8;
  private static final double FOOT_SIZE = 7;

  private RunningHeads() {}

  static void write(Flow flow, Printout printout) throws IOException {
    List<Sheet> sheets = flow.sheets();
    String ref = printout.reference();
    String notation = ToothWords.name(printout.notation());
    for (int i = 0; i < sheets.size(); i++) {
      Sheet s = sheets.get(i);
      String page = "Page " + (i + 1) + " of " + sheets.size();
      double right = s.width() - flow.left();
      s.beginArtifact();
      double head = 16 * Sheet.MM;
      if (i == 0) {
        s.textEnding(right, head + 1, page, Weight.REGULAR, SIZE, Shade.QUIET);
      } else {
        s.text(
            flow.left(),
            head,
            shortened(Printout.KIND + (ref.isEmpty() ? "" : "  ·  " + ref), SIZE, 105 * Sheet.MM),
            Weight.REGULAR,
            SIZE,
            Shade.QUIET);
        s.textEnding(
            right,
            head,
            "Teeth by " + notation + "  ·  " + page,
            Weight.REGULAR,
            SIZE,
            Shade.QUIET);
        s.rule(flow.left(), head + 4, right, 0.6, Shade.RULE);
      }
      double foot = s.height() - 10 * Sheet.MM;
      s.rule(flow.left(), foot - 9, right, 0.6, Shade.RULE);
      s.text(flow.left(), foot, Cautions.LINE, Weight.REGULAR, FOOT_SIZE, Shade.QUIET);
      String tail =
          (ref.isEmpty() ? "" : shortened(ref, FOOT_SIZE, 60 * Sheet.MM) + "  ·  ") + page;
      s.textEnding(right, foot + 9, tail, Weight.REGULAR, FOOT_SIZE, Shade.QUIET);
      s.end();
    }
  }

  /** The words, cut with an ellipsis where they are too long for a running head. */
  private static String shortened(String words, double size, double width) {
    if (TypeFace.width(words, Weight.REGULAR, size) <= width) {
      return words;
    }
    int end = words.length();
    while (end > 0 && TypeFace.width(words.substring(0, end) + "…", Weight.REGULAR, size) > width) {
      end = words.offsetByCodePoints(end, -1);
    }
    return words.substring(0, end).strip() + "…";
  }
}
