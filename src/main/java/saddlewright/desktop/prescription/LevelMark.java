package saddlewright.desktop.prescription;

import java.util.Locale;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import saddlewright.desktop.Words;
import saddlewright.prescription.Level;

/** The mark beside a field: how strongly it is asked for, and whether it is filled in. */
final class LevelMark extends Label {
  private static final PseudoClass FILLED = PseudoClass.getPseudoClass("filled");

  LevelMark() {
    getStyleClass().add("level");
    setMinWidth(Region.USE_PREF_SIZE);
  }

  void show(Level level, boolean filled) {
    String sign =
        filled ? Words.of("level.sign.filled") : demands(level) ? Words.of("level.sign.open") : "";
    setText((sign + " " + Words.of("level." + level)).strip());
    pseudoClassStateChanged(FILLED, filled);
    for (Level l : Level.values()) {
      pseudoClassStateChanged(
          PseudoClass.getPseudoClass(l.name().toLowerCase(Locale.ROOT)), l == level);
    }
  }

  /** Whether leaving it open leaves a gap. */
  private static boolean demands(Level level) {
    return level == Level.MUST || level == Level.SHOULD;
  }

  /** The same for those who hear it. */
  static String words(Level level, boolean filled) {
    return Words.of(filled ? "level.heard.filled" : "level.heard.open", Words.of("level." + level));
  }
}
