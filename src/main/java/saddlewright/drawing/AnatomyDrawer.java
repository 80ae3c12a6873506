package saddlewright.drawing;

import java.util.List;
import saddlewright.archform.ArchForm;

/** Draws what the mouth has besides teeth: margins, ridges, sulci, palate, pads, frena, tori. */
final class AnatomyDrawer {
  private AnatomyDrawer() {}

  static List<Mark> marks(ArchForm form, DrawingOptions options) {
    return List.of();
  }
}
