package saddlewright.drawing;

import java.util.List;
import saddlewright.layout.Layout;

/** Draws all cast metal as the one casting that it is. */
final class FrameworkDrawer {
  private FrameworkDrawer() {}

  static List<Mark> marks(Layout layout) {
    return List.of();
  }
}
