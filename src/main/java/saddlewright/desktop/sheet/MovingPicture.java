package saddlewright.desktop.sheet;

import java.nio.IntBuffer;
import java.util.Optional;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import saddlewright.geometry.Box;
import saddlewright.geometry.Point;

/**
 * What is seen of the sheet as a picture, shown in its place while it moves. Each frame takes its
 * pixels from a picture of the window as it was when the movement began and, beyond its edges, from
 * a coarser one of the whole page. Painting the sheet itself takes many times as long, and without
 * a graphics processor so does having a picture scaled by the toolkit.
 */
final class MovingPicture extends ImageView {
  /** The picture of the whole page is at most this wide and high, pixels. */
  private static final double FAR_SIDE = 1200;

  private final Node world;
  private final Camera camera;
  private Optional<StillPicture> near = Optional.empty();
  private Optional<StillPicture> far = Optional.empty();
  private int[] pixels = new int[0];
  private PixelBuffer<IntBuffer> buffer;
  private int width;
  private int height;
  private int ground;
  private Paint desk = Color.TRANSPARENT;
  private Box page = new Box(0, 0, 1, 1);

  MovingPicture(Node world, Camera camera) {
    this.world = world;
    this.camera = camera;
    setMouseTransparent(true);
    setVisible(false);
    setSmooth(false);
  }

  boolean isShown() {
    return isVisible();
  }

  /**
   * Takes the picture and hides the sheet behind it; further calls do nothing until {@link #end}.
   *
   * @param across width of the window on to the sheet, in pixels
   * @param down its height
   * @param whole all that can come to be seen, in mm
   * @param around what lies around the page
   */
  void begin(double across, double down, Box whole, Paint around) {
    if (isVisible() || across < 1 || down < 1) {
      return;
    }
    page = whole;
    desk = around;
    ground = argb(around);
    int w = (int) Math.ceil(across);
    int h = (int) Math.ceil(down);
    if (w != width || h != height || buffer == null) {
      width = w;
      height = h;
      pixels = new int[w * h];
      buffer = new PixelBuffer<>(w, h, IntBuffer.wrap(pixels), PixelFormat.getIntArgbPreInstance());
      setImage(new WritableImage(buffer));
    }
    near = Optional.of(StillPicture.of(world, camera, new Rectangle2D(0, 0, w, h), 1, desk));
    world.setVisible(false);
    setVisible(true);
  }

  /** Shows what the camera now looks at. */
  void follow() {
    if (!isVisible()) {
      return;
    }
    double mm = 1 / camera.scaleProperty().get();
    Point from = camera.toSheet(0, 0);
    StillPicture sharp = near.orElseThrow();
    int[] x = sharp.columns(from.x(), mm, width);
    int[] y = sharp.rows(from.y(), mm, height);
    if (lacks(from, mm, sharp) && far.isEmpty()) {
      far = Optional.of(wholePage());
    }
    int[] farX = far.map(f -> f.columns(from.x(), mm, width)).orElse(new int[0]);
    int[] farY = far.map(f -> f.rows(from.y(), mm, height)).orElse(new int[0]);
    for (int row = 0; row < height; row++) {
      int out = row * width;
      boolean repeated =
          row > 0 && y[row] == y[row - 1] && (far.isEmpty() || farY[row] == farY[row - 1]);
      if (repeated) {
        System.arraycopy(pixels, out - width, pixels, out, width);
      } else {
        compose(sharp, x, y[row], farX, far.isEmpty() ? -1 : farY[row], out);
      }
    }
    buffer.updateBuffer(b -> null);
  }

  private void compose(StillPicture sharp, int[] x, int y, int[] farX, int farY, int out) {
    int[] source = sharp.pixels();
    int start = y * sharp.width();
    int[] coarse = far.map(StillPicture::pixels).orElse(source);
    int coarseStart = farY < 0 ? 0 : farY * far.orElseThrow().width();
    for (int i = 0; i < width; i++) {
      pixels[out + i] =
          y >= 0 && x[i] >= 0
              ? source[start + x[i]]
              : farY >= 0 && farX[i] >= 0 ? coarse[coarseStart + farX[i]] : ground;
    }
  }

  /** Whether part of the page is seen that the sharp picture does not hold. */
  private boolean lacks(Point from, double mm, StillPicture sharp) {
    Point held = sharp.corner();
    return Math.max(from.x(), page.minX()) < held.x()
        || Math.max(from.y(), page.minY()) < held.y()
        || Math.min(from.x() + width * mm, page.maxX()) > held.x() + sharp.width() / sharp.scale()
        || Math.min(from.y() + height * mm, page.maxY())
            > held.y() + sharp.height() / sharp.scale();
  }

  /** Shows the sheet itself again. */
  void end() {
    setVisible(false);
    world.setVisible(true);
    near = Optional.empty();
  }

  /** The page is another: what was taken of it is of no more use. */
  void forget() {
    far = Optional.empty();
  }

  private StillPicture wholePage() {
    double s = camera.scaleProperty().get();
    Point from = camera.toWindow(new Point(page.minX(), page.minY()));
    Rectangle2D part = new Rectangle2D(from.x(), from.y(), page.width() * s, page.height() * s);
    double factor = Math.min(1, FAR_SIDE / Math.max(part.getWidth(), part.getHeight()));
    world.setVisible(true);
    StillPicture out = StillPicture.of(world, camera, part, factor, desk);
    world.setVisible(false);
    return out;
  }

  private static int argb(Paint paint) {
    if (paint instanceof Color c && c.isOpaque()) {
      return 0xff000000
          | (int) Math.round(c.getRed() * 255) << 16
          | (int) Math.round(c.getGreen() * 255) << 8
          | (int) Math.round(c.getBlue() * 255);
    }
    return 0;
  }
}
