package saddlewright.desktop.preview;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.scene.AccessibleRole;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Region;
import saddlewright.desktop.Words;
import saddlewright.prescription.pdf.print.PageSize;

/** One page on the desk, rendered while it is in view. */
final class PageView extends Region {
  /** A picture holds no more pixels than this; beyond it is magnified a little. */
  private static final double MOST_PIXELS = 2.5e7;

  private final ImageView picture = new ImageView();
  private final int page;
  private final AtomicInteger wish = new AtomicInteger();
  private Optional<Document> document = Optional.empty();
  private PageSize size;
  private double scale;
  private double wished;
  private int shown;

  PageView(int page, PageSize size) {
    this.page = page;
    this.size = size;
    setId("page-" + (page + 1));
    getStyleClass().add("paper");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    getChildren().add(picture);
    setOnMousePressed(e -> requestFocus());
  }

  PageSize size() {
    return size;
  }

  /** Shows a page of a newer document; the old picture stays until the new one is there. */
  void take(Document newer) {
    document = Optional.of(newer);
    size = newer.sizes().get(page);
    wished = 0;
    wish.incrementAndGet();
    setAccessibleText(Words.of("pages.page-of", page + 1, newer.count()));
  }

  /** Sets how large it is, in pixels a millimetre. */
  void setScale(double pixelsPerMm) {
    scale = pixelsPerMm;
    double w = Math.round(size.width() * scale);
    double h = Math.round(size.height() * scale);
    setMinSize(w, h);
    setMaxSize(w, h);
    setPrefSize(w, h);
    picture.setFitWidth(w);
    picture.setFitHeight(h);
  }

  /** It has come into view: its picture is wanted. */
  void appear(double outputScale) {
    double most = Math.sqrt(MOST_PIXELS / (size.width() * size.height()));
    double wanted = Math.min(scale * outputScale, most);
    if (document.isEmpty() || wanted == wished) {
      return;
    }
    wished = wanted;
    int mine = wish.incrementAndGet();
    Document d = document.get();
    d.picture(
        Backstage.Urgency.PAGE_IN_VIEW,
        page,
        wanted,
        () -> wish.get() == mine,
        image -> {
          picture.setImage(image);
          shown = mine;
        });
    d.words(
        page,
        () -> wish.get() == mine,
        words -> setAccessibleText(Words.of("pages.page-of", page + 1, d.count()) + ".\n" + words));
  }

  /** It has gone out of view: its picture is given up. */
  void disappear() {
    if (wished != 0) {
      wished = 0;
      wish.incrementAndGet();
      picture.setImage(null);
    }
  }

  /** Whether the picture that was asked for last is there. */
  boolean isShown() {
    return wished > 0 && shown == wish.get();
  }
}
