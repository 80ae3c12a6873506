package saddlewright.desktop.prescription;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import saddlewright.prescription.FormField;

/** A field that follows from the case: what it says, and a way to where that comes from. */
final class FactBlock extends FieldBlock {
  private final Label fact = small("fact");
  private final Hyperlink way = new Hyperlink();
  private final Supplier<String> words;

  /**
   * @param words what it says now
   * @param wayName where it comes from
   * @param go goes there
   */
  FactBlock(FormField field, Supplier<String> words, String wayName, Runnable go) {
    super(field);
    this.words = words;
    way.setText(wayName);
    way.setWrapText(true);
    way.setId("rx-" + field.key());
    way.setOnAction(e -> go.run());
    controls(fact, way);
  }

  /** A fact that comes from nowhere else. */
  FactBlock(FormField field, Supplier<String> words) {
    super(field);
    this.words = words;
    fact.setId("rx-" + field.key());
    controls(fact);
  }

  @Override
  boolean isWide() {
    return true;
  }

  @Override
  Node focus() {
    return way.getParent() == null ? fact : way;
  }

  @Override
  void refresh() {
    String now = words.get();
    if (!now.equals(fact.getText())) {
      fact.setText(now);
    }
  }
}
