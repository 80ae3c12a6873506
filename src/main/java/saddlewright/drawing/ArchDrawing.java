package saddlewright.drawing;

import java.util.List;
import saddlewright.geometry.Box;
import saddlewright.geometry.Transform;
import saddlewright.layout.Layout;

/** The drawing of one arch with its denture, in the frame of the arch (y towards the molars). */
public final class ArchDrawing {
  private ArchDrawing() {}

  /** The drawing with the number of each component around it, for which it takes more room. */
  public static Drawing numbered(Layout layout, Drawing bare, List<Callout> numbers) {
    List<PlacedCallout> placed = Callouts.of(layout, bare, numbers);
    if (placed.isEmpty()) {
      return bare;
    }
    Box box = bare.bounds().union(BalloonPlaces.room(layout.form(), placed.size()));
    for (PlacedCallout p : placed) {
      box = box.union(p.box(Transform.IDENTITY));
    }
    return bare.plus(new Drawing(PlacedCallout.marks(placed, Transform.IDENTITY), box));
  }

  public static Drawing of(Layout layout, DrawingOptions options) {
    return new Draughtsman().draw(layout, options);
  }
}
