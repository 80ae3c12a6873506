package saddlewright.drawing;

import java.util.Optional;
import saddlewright.dentition.Arch;
import saddlewright.geometry.Transform;
import saddlewright.layout.Layout;

/**
 * The design sheet: the upper arch opening downwards above the lower one opening upwards, y down the
 * page, millimetres at true scale.
 *
 * @param drawing all marks, in the frame of the sheet
 * @param upperPlace from the frame of the upper arch to that of the sheet, when it is shown
 * @param lowerPlace the same for the lower arch
 */
public record SheetDrawing(
    Drawing drawing, Optional<Transform> upperPlace, Optional<Transform> lowerPlace) {

  public static SheetDrawing of(
      Optional<Layout> upper, Optional<Layout> lower, DrawingOptions options) {
    throw new UnsupportedOperationException();
  }

  public Optional<Transform> place(Arch arch) {
    return arch == Arch.UPPER ? upperPlace : lowerPlace;
  }
}
