package saddlewright.prescription.pdf;

import java.io.IOException;

/**
 * Words across a page and along both its edges that nobody can overlook, under all that is written
 * on it later. They are for the eye only; the text of the document says the same once.
 */
final class Stamp {
  /** What keeps an exercise out of a laboratory. */
  static final String EXERCISE = "Teaching exercise. Not a prescription. Do not manufacture.";

  private static final double EDGE_SIZE = 7.5;
  private static final double SHARE_OF_DIAGONAL = 0.8;
  private static final int ON_EDGE = 3;

  private final String words;

  Stamp(String words) {
    this.words = words;
  }

  /** Marks a page on which nothing stands yet. */
  void paint(Sheet sheet) throws IOException {
    double w = sheet.width();
    double h = sheet.height();
    double slope = Math.atan2(h, w);
    double length = SHARE_OF_DIAGONAL * Math.hypot(w, h);
    double size = length / TypeFace.width(words, Weight.BOLD, 1);
    // Half the height of capitals below the diagonal, so that it runs through the middle.
    double below = 0.345 * size;
    double x = w / 2 - length / 2 * Math.cos(slope) + below * Math.sin(slope);
    double y = h / 2 + length / 2 * Math.sin(slope) + below * Math.cos(slope);
    sheet.beginArtifact();
    sheet.turnedText(x, y, slope, words, size, Shade.WATERMARK);
    double wide = TypeFace.width(words, Weight.BOLD, EDGE_SIZE);
    for (int i = 0; i < ON_EDGE; i++) {
      double middle = h * (i + 0.5) / ON_EDGE;
      sheet.turnedText(9 * Sheet.MM, middle + wide / 2, Math.PI / 2, words, EDGE_SIZE, Shade.QUIET);
      sheet.turnedText(
          w - 9 * Sheet.MM, middle - wide / 2, -Math.PI / 2, words, EDGE_SIZE, Shade.QUIET);
    }
    sheet.end();
  }
}
