package saddlewright.desktop;

import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.image.Image;

/** The program's icon, in the sizes that platforms ask for. */
final class Icons {
  private static final int[] SIZES = {16, 32, 48, 128};

  private Icons() {}

  static List<Image> all() {
    return IntStream.of(SIZES)
        .mapToObj(n -> Icons.class.getResource("/saddlewright/desktop/icon/" + n + ".png"))
        .map(r -> new Image(r.toExternalForm()))
        .toList();
  }
}
