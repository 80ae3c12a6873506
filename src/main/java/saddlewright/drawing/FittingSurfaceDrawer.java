package saddlewright.drawing;

import java.util.List;
import java.util.Optional;
import saddlewright.design.Subject;
import saddlewright.geometry.Outline;
import saddlewright.layout.Laid;

/** Draws what is done to the fitting surface: dams, beading and relief. */
final class FittingSurfaceDrawer {
  private static final double DAM_WIDTH = 0.14;
  private static final double RELIEF_PITCH = 0.95;

  private final Laid laid;
  private final Optional<Subject> subject;

  FittingSurfaceDrawer(Laid laid, Optional<Subject> subject) {
    this.laid = laid;
    this.subject = subject;
  }

  List<Mark> postDam() {
    return List.of(
        new Mark.Stroke(
            Layer.COMPONENTS,
            Ink.METAL_LINE,
            subject,
            laid.details(),
            false,
            DAM_WIDTH,
            List.of()));
  }

  List<Mark> relief() {
    return List.of(
        new Mark.Dots(
            Layer.COMPONENTS,
            Ink.RELIEF,
            subject,
            Texture.stipple(laid.body(), RELIEF_PITCH),
            0.13),
        new Mark.Stroke(
            Layer.COMPONENTS,
            Ink.RELIEF,
            subject,
            laid.body().boundaries().stream().map(Outline::toPath).toList(),
            false,
            0.28,
            List.of(0.8, 0.6)));
  }
}
