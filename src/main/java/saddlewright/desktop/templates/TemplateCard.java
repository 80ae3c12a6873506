package saddlewright.desktop.templates;

import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;

/** A template as one sees it: its picture, name, class, and what the design is. */
final class TemplateCard extends VBox {
  /** What can be done with it. */
  interface Actions {
    void begin(Template template);

    void rename(Template template, String name);

    void remove(Template template);
  }

  private final Template template;
  private final Button begin = new Button();
  private final StackPane picture = new StackPane();
  private final double width;

  TemplateCard(Template template, double width, Actions actions) {
    this.template = template;
    this.width = width;
    getStyleClass().add("template");
    Label name = new Label(template.name());
    name.getStyleClass().add("demo-title");
    Label classes = new Label(Words.capital(template.classes()));
    classes.getStyleClass().add("demo-class");
    Label words = new Label(template.subject().story());
    words.getStyleClass().add("template-words");
    for (Label l : new Label[] {name, classes, words}) {
      l.setWrapText(true);
      l.setMinHeight(Region.USE_PREF_SIZE);
      // Without a least width the button would make room for the words at their narrowest.
      l.setMinWidth(width);
      l.setPrefWidth(width);
    }
    picture.getStyleClass().add("template-picture");
    picture.setMinSize(width, width * 0.82);
    picture.setPrefSize(width, width * 0.82);
    picture.setMaxSize(width, width * 0.82);
    VBox face = new VBox(4, picture, name, classes, words);
    face.setPrefWidth(width);
    begin.setGraphic(face);
    begin.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
    begin.getStyleClass().addAll("demo", "template-begin");
    begin.setMaxHeight(Double.MAX_VALUE);
    begin.setAccessibleText(
        Words.of(
            "templates.card", template.name(), template.classes(), template.subject().story()));
    begin.setOnAction(e -> actions.begin(template));
    VBox.setVgrow(begin, Priority.ALWAYS);
    getChildren().add(begin);
    if (template.isOwn()) {
      getChildren().add(own(actions));
      begin.setOnKeyPressed(
          e -> {
            if (e.getCode() == KeyCode.DELETE) {
              actions.remove(template);
              e.consume();
            } else if (e.getCode() == KeyCode.F2) {
              rename(actions);
              e.consume();
            }
          });
    }
  }

  private HBox own(Actions actions) {
    Button rename = new Button(Words.of("templates.rename"));
    rename.getStyleClass().add("template-rename");
    rename.setAccessibleText(Words.of("templates.rename-it", template.name()));
    rename.setOnAction(e -> rename(actions));
    Button remove = new Button(Words.of("templates.remove"));
    remove.getStyleClass().add("template-remove");
    remove.setAccessibleText(Words.of("templates.remove-it", template.name()));
    remove.setOnAction(e -> actions.remove(template));
    HBox row = new HBox(6, rename, remove);
    row.getStyleClass().add("template-own");
    return row;
  }

  /** Turns the row below into a field for the new name; Escape leaves it as it was. */
  private void rename(Actions actions) {
    Node row = getChildren().get(1);
    TextField field = new TextField(template.name());
    field.setId("template-name");
    field.setAccessibleText(Words.of("templates.new-name"));
    Consumer<Boolean> done =
        keep -> {
          String name = field.getText().strip();
          getChildren().set(1, row);
          begin.requestFocus();
          if (keep && !name.isEmpty() && !name.equals(template.name())) {
            actions.rename(template, name);
          }
        };
    field.setOnAction(e -> done.accept(true));
    field.setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ESCAPE) {
            done.accept(false);
            e.consume();
          }
        });
    getChildren().set(1, field);
    field.requestFocus();
    field.selectAll();
  }

  Template template() {
    return template;
  }

  Button button() {
    return begin;
  }

  double pictureWidth() {
    return width;
  }

  void show(Node drawn) {
    picture.getChildren().setAll(drawn);
  }
}
