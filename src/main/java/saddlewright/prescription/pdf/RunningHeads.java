package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.List;
import saddlewright.casefile.Cautions;
import saddlewright.prescription.ToothWords;

/** Head and foot of every page; written last, when it is known how many pages there are. */
final class RunningHeads {
  private static final double SIZE = 8;
  private static final double FOOT_SIZE = 7;
  private static final double HEAD = 12.5 * Sheet.MM;

  /** From the lower edge of the page to the base line of the last line. */
  private static final double FOOT = 8 * Sheet.MM;

  private RunningHeads() {}

  static void write(Flow flow, Printout printout) throws IOException {
    List<Sheet> sheets = flow.sheets();
    String ref = printout.reference();
    for (int i = 0; i < sheets.size(); i++) {
      Sheet s = sheets.get(i);
      double left = flow.left();
      double right = s.width() - left;
      s.beginArtifact();
      String kind = printout.kind().title();
      s.text(left, HEAD, kind, Weight.BOLD, SIZE, Shade.INK);
      double after = left + TypeFace.width(kind, Weight.BOLD, SIZE);
      String state = printout.stateWords();
      double room = right - after - TypeFace.width(state, Weight.REGULAR, SIZE) - 12;
      if (!ref.isEmpty()) {
        String words = shortened("  ·  " + ref, SIZE, room);
        s.text(after, HEAD, words, Weight.REGULAR, SIZE, Shade.QUIET);
      }
      s.textEnding(right, HEAD, state, Weight.REGULAR, SIZE, Shade.QUIET);
      s.rule(left, HEAD + 4, right, 0.6, Shade.RULE);

      double foot = s.height() - FOOT;
      s.rule(left, foot - 18, right, 0.6, Shade.RULE);
      s.text(left, foot - 9, Cautions.LINE, Weight.REGULAR, FOOT_SIZE, Shade.QUIET);
      String teeth = "Teeth by " + ToothWords.name(printout.notation());
      s.text(left, foot, teeth, Weight.REGULAR, FOOT_SIZE, Shade.QUIET);
      String page = "Page " + (i + 1) + " of " + sheets.size();
      String tail =
          (ref.isEmpty() ? "" : shortened(ref, FOOT_SIZE, 60 * Sheet.MM) + "  ·  ") + page;
      s.textEnding(right, foot, tail, Weight.REGULAR, FOOT_SIZE, Shade.QUIET);
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
    return words.substring(0, end).stripTrailing() + "…";
  }
}
