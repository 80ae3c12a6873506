package saddlewright.desktop.prescription;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;
import saddlewright.prescription.FormSection;
import saddlewright.prescription.Level;

/** A section of the form: its heading with how much of it is missing, and its fields. */
final class SectionCard extends VBox {
  private final FormSection section;
  private final Label count = new Label();
  private final List<FieldBlock> blocks;
  private final Node first;
  private String state = "";
  private String sign = "";

  /**
   * @param above what stands between the heading and the fields
   */
  SectionCard(FormSection section, List<Node> above, List<FieldBlock> blocks) {
    this.section = section;
    this.blocks = List.copyOf(blocks);
    getStyleClass().add("section");
    setId("section-" + section);
    Label title = new Label(section.title());
    title.getStyleClass().add("section-title");
    title.setWrapText(true);
    HBox.setHgrow(title, Priority.ALWAYS);
    title.setMaxWidth(Double.MAX_VALUE);
    count.getStyleClass().add("section-count");
    count.setMinWidth(USE_PREF_SIZE);
    HBox head = new HBox(10, title, count);
    head.setAlignment(Pos.BASELINE_LEFT);
    TwoColumns fields = new TwoColumns();
    fields.getChildren().addAll(blocks);
    getChildren().add(head);
    getChildren().addAll(above);
    getChildren().add(fields);
    first = head;
  }

  FormSection section() {
    return section;
  }

  List<FieldBlock> blocks() {
    return blocks;
  }

  /** Where the section begins. */
  Node head() {
    return first;
  }

  /** Shows how many of its fields are wanting; empty when none of it is asked for. */
  void show(int must, int should) {
    state =
        must > 0
            ? Words.of("section.must", must)
            : should > 0 ? Words.of("section.should", should) : Words.of("section.full");
    sign =
        must > 0
            ? Integer.toString(must)
            : Words.of(should > 0 ? "level.sign.open" : "level.sign.filled");
    count.setText(state);
    for (Level l : List.of(Level.MUST, Level.SHOULD)) {
      count.pseudoClassStateChanged(
          PseudoClass.getPseudoClass(l.code()),
          l == Level.MUST ? must > 0 : must == 0 && should > 0);
    }
  }

  /** The same in words, for the index. */
  String state() {
    return state;
  }

  /** The same as briefly as can be: how many must still be filled in, or that none must. */
  String sign() {
    return sign;
  }
}
