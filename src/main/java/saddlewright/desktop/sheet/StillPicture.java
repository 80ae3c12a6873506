package saddlewright.desktop.sheet;

import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Paint;
import javafx.scene.transform.Scale;
import saddlewright.geometry.Point;

/**
 * The pixels of a part of the sheet, as it was when the picture was taken.
 *
 * @param width in pixels
 * @param height in pixels
 * @param corner what the upper left pixel shows, in mm of the sheet
 * @param scale pixels in a millimetre
 */
record StillPicture(int[] pixels, int width, int height, Point corner, double scale) {

  /**
   * Takes a picture of what is seen of the sheet in a window, shrunk by a factor.
   *
   * @param part of the window, in its pixels
   */
  static StillPicture of(Node world, Camera camera, Rectangle2D part, double factor, Paint desk) {
    SnapshotParameters how = new SnapshotParameters();
    how.setFill(desk);
    how.setTransform(new Scale(factor, factor));
    int w = (int) Math.max(1, Math.ceil(part.getWidth() * factor));
    int h = (int) Math.max(1, Math.ceil(part.getHeight() * factor));
    how.setViewport(new Rectangle2D(part.getMinX() * factor, part.getMinY() * factor, w, h));
    WritableImage image = world.snapshot(how, null);
    int[] pixels = new int[w * h];
    image.getPixelReader().getPixels(0, 0, w, h, PixelFormat.getIntArgbPreInstance(), pixels, 0, w);
    return new StillPicture(
        pixels,
        w,
        h,
        camera.toSheet(part.getMinX(), part.getMinY()),
        camera.scaleProperty().get() * factor);
  }

  /** For each pixel of a window across, the column that it shows; -1 where there is none. */
  int[] columns(double from, double mmPerPixel, int count) {
    return indices(from - corner.x(), mmPerPixel, count, width);
  }

  /** The same for the rows. */
  int[] rows(double from, double mmPerPixel, int count) {
    return indices(from - corner.y(), mmPerPixel, count, height);
  }

  private int[] indices(double from, double mmPerPixel, int count, int most) {
    int[] out = new int[count];
    double step = mmPerPixel * scale;
    double at = from * scale + step / 2;
    for (int i = 0; i < count; i++) {
      int index = (int) Math.floor(at + i * step);
      out[i] = index >= 0 && index < most ? index : -1;
    }
    return out;
  }
}
