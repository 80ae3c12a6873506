package saddlewright.desktop.preferences;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.stage.FileChooser;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.order.Item;
import saddlewright.desktop.FileQuestion;
import saddlewright.desktop.Words;
import saddlewright.prescription.FormField;
import saddlewright.prescription.pdf.Letterhead;

/** Who the prescriber is and to which laboratory they send their work, and their letterhead. */
final class MyDetailsPage extends Page {
  private final MyDetails mine;
  private final Map<Item, TextInputControl> fields = new EnumMap<>(Item.class);
  private final Label picture = words("", "preferences-hint");
  private final Label trouble = words("", "field-error");
  private final Button bare = new Button(Words.of("mine.no-letterhead"));

  MyDetailsPage(MyDetails mine) {
    super("mine");
    this.mine = mine;
    say(Words.of("preferences.mine-intro"));
    for (Item item : MyDetails.ITEMS) {
      FormField field = FormField.of(item);
      TextInputControl text = item.form() == Item.Form.LINES ? lines() : new TextField();
      text.setId("preferences-" + item.key());
      fields.put(item, text);
      text.focusedProperty()
          .addListener(
              (o, was, focused) -> {
                if (!focused) {
                  keep();
                }
              });
      text.addEventHandler(
          KeyEvent.KEY_PRESSED,
          e -> {
            if (e.getCode() == KeyCode.ENTER && text instanceof TextField) {
              keep();
            }
          });
      row(field.title(), text, Optional.of(field.hint()).filter(h -> !h.isBlank()));
    }
    Button choose = new Button(Words.of("mine.letterhead"));
    choose.setId("preferences-letterhead");
    choose.setOnAction(e -> choose());
    bare.setId("preferences-no-letterhead");
    bare.setOnAction(e -> take(Optional.empty()));
    row(Words.of("preferences.letterhead"), new FlowPane(8, 6, choose, bare), Optional.empty());
    add(picture);
    trouble.managedProperty().bind(trouble.textProperty().isNotEmpty());
    trouble.setId("preferences-mine-trouble");
    add(trouble);
    mine.knownProperty().addListener(o -> show());
    mine.letterheadProperty().addListener(o -> show());
    show();
  }

  private static TextArea lines() {
    TextArea area = new TextArea();
    area.setPrefRowCount(3);
    area.setWrapText(true);
    return area;
  }

  private void show() {
    fields.forEach(
        (item, field) -> {
          String text = mine.known().getOrDefault(item, "");
          if (!field.getText().strip().equals(text)) {
            field.setText(text);
          }
        });
    picture.setText(
        mine.letterhead()
            .map(Path::toString)
            .orElseGet(() -> Words.of("preferences.letterhead-none")));
    bare.setDisable(mine.letterhead().isEmpty());
  }

  /** Keeps what stands in the fields, if that is something else than before. */
  void keep() {
    Map<Item, String> now = new EnumMap<>(Item.class);
    fields.forEach(
        (item, field) -> {
          if (!field.getText().isBlank()) {
            now.put(item, field.getText().strip());
          }
        });
    if (!now.equals(mine.known())) {
      keep(now);
    }
  }

  private void keep(Map<Item, String> texts) {
    try {
      mine.remember(texts);
      trouble.setText("");
    } catch (CaseFileException e) {
      trouble.setText(Words.of("preferences.not-kept", e.sentences()));
    }
  }

  private void choose() {
    FileChooser question = new FileChooser();
    question.setTitle(Words.of("mine.letterhead-title"));
    question
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter("PNG, JPEG", "*.png", "*.jpg", "*.jpeg"));
    FileQuestion.toOpen(question, bare.getScene().getWindow())
        .ifPresent(file -> take(Optional.of(file)));
  }

  /** Puts a picture at the head of prescriptions, or none. */
  void take(Optional<Path> file) {
    try {
      if (file.isPresent()) {
        Letterhead.of(file.get());
      }
      mine.rememberLetterhead(file);
      trouble.setText("");
    } catch (CaseFileException e) {
      trouble.setText(e.sentences());
    }
  }

  @Override
  void reset() {
    keep(Map.of());
    take(Optional.empty());
  }

  @Override
  Runnable wayBack() {
    Map<Item, String> known = mine.known();
    Optional<Path> head = mine.letterhead();
    return () -> {
      keep(known);
      take(head);
    };
  }
}
