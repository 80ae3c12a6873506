package saddlewright.desktop.prescription;

import java.util.List;
import javafx.animation.PauseTransition;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import saddlewright.desktop.Words;
import saddlewright.prescription.Completeness;
import saddlewright.prescription.FormField;
import saddlewright.prescription.Level;

/**
 * The place of one field in the form: its name, how strongly it is asked for, its controls, and
 * what is wrong with what stands there.
 */
abstract class FieldBlock extends VBox {
  private static final PseudoClass FOUND = PseudoClass.getPseudoClass("found");
  private static final Duration FLASH = Duration.millis(1600);

  private final FormField field;
  private final Label name = new Label();
  private final LevelMark mark = new LevelMark();
  private final Label hint = small("hint-line");
  private final Label problem = small("field-error");
  private final PauseTransition flash = new PauseTransition(FLASH);
  private double measuredWidth = -1;
  private double measuredHeight;

  FieldBlock(FormField field) {
    this.field = field;
    getStyleClass().add("field-block");
    setId("block-" + field.key());
    name.setText(field.title());
    name.setWrapText(true);
    name.getStyleClass().add("field-title");
    HBox.setHgrow(name, Priority.ALWAYS);
    name.setMaxWidth(Double.MAX_VALUE);
    HBox head = new HBox(8, name, mark);
    head.setAlignment(Pos.BASELINE_LEFT);
    getChildren().add(head);
    hint(field.hint().isEmpty() ? "" : Words.capital(field.hint()) + ".");
    problem("");
    flash.setOnFinished(e -> pseudoClassStateChanged(FOUND, false));
  }

  /** Puts the controls between the name and what is said of them. */
  final void controls(Node... nodes) {
    getChildren().addAll(nodes);
    getChildren().addAll(hint, problem);
    name.setLabelFor(focus());
  }

  final FormField field() {
    return field;
  }

  /** Whether it needs the whole breadth of the page. */
  boolean isWide() {
    return false;
  }

  /** The control that takes the focus when the field is gone to. */
  abstract Node focus();

  /** The inputs that bear the name of the field. */
  List<Node> inputs() {
    return List.of(focus());
  }

  /** Takes over what stands in the case now. */
  abstract void refresh();

  /** Whether a sentence on what is missing would only repeat that nothing is there. */
  boolean isBlank() {
    return false;
  }

  final void update(Completeness.Line line) {
    refresh();
    // What is optional lacks nothing when it is blank; that does not make it filled in.
    boolean filled = line.isFilled() && !(line.level() == Level.OPTIONAL && isBlank());
    mark.show(line.level(), filled);
    problem(line.isFilled() || isBlank() ? "" : String.join(" ", line.missing()));
    String heard = field.title() + ", " + LevelMark.words(line.level(), filled);
    for (Node n : inputs()) {
      if (!heard.equals(n.getAccessibleText())) {
        n.setAccessibleText(heard);
      }
    }
  }

  final void hint(String sentence) {
    say(hint, sentence);
  }

  private void problem(String sentence) {
    say(problem, sentence);
  }

  /** Shows for a moment which field has been gone to. */
  final void flash() {
    pseudoClassStateChanged(FOUND, true);
    flash.playFromStart();
  }

  /** Remembered, for one field that grows has all the others of its section measured again. */
  @Override
  protected double computePrefHeight(double width) {
    if (width < 0) {
      return super.computePrefHeight(width);
    }
    if (width != measuredWidth) {
      measuredHeight = super.computePrefHeight(width);
      measuredWidth = width;
    }
    return measuredHeight;
  }

  @Override
  public void requestLayout() {
    measuredWidth = -1;
    super.requestLayout();
  }

  private static void say(Label label, String sentence) {
    if (sentence.equals(label.getText()) && label.isManaged() != sentence.isEmpty()) {
      return;
    }
    label.setText(sentence);
    label.setVisible(!sentence.isEmpty());
    label.setManaged(!sentence.isEmpty());
  }

  static Label small(String style) {
    Label l = new Label();
    l.setWrapText(true);
    l.setMinHeight(Region.USE_PREF_SIZE);
    l.getStyleClass().add(style);
    return l;
  }
}
