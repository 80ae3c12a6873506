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
  private final Supplier<Object> source;
  private final Supplier<String> words;
  private Object told = "";

  /**
   * @param source what it is derived from; while that stays equal it says the same
   * @param words what it says now
   * @param wayName where it comes from
   * @param go goes there
   */
  FactBlock(
      FormField field,
      Supplier<Object> source,
      Supplier<String> words,
      String wayName,
      Runnable go) {
    super(field);
    this.source = source;
    this.words = words;
    way.setText(wayName);
    way.setWrapText(true);
    way.setId("rx-" + field.key());
    way.setOnAction(e -> go.run());
    controls(fact, way);
  }

  /** A fact that comes from nowhere else. */
  FactBlock(FormField field, Supplier<Object> source, Supplier<String> words) {
    super(field);
    this.source = source;
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
    Object now = source.get();
    if (!now.equals(told)) {
      told = now;
      fact.setText(words.get());
    }
  }
}
