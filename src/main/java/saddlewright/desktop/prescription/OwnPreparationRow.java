package saddlewright.desktop.prescription;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import saddlewright.casefile.Case;
import saddlewright.casefile.order.OwnPreparation;
import saddlewright.casefile.order.PreparationKind;
import saddlewright.casefile.order.Preparations;
import saddlewright.dentition.Tooth;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.PreparationPlan;

/** Adds a preparation that does not follow from the design. */
final class OwnPreparationRow extends VBox {
  private final Worktable table;
  private final Consumer<String> added;
  private final ComboBox<PreparationKind> kind;
  private final TextField teeth = field("teeth", 8);
  private final TextField surface = field("surface", 9);
  private final TextField target = field("target", 22);
  private final TextField reason = field("reason", 14);
  private final Label error = FieldBlock.small("field-error");

  /**
   * @param added is told the key of a preparation that has been added
   */
  OwnPreparationRow(Worktable table, Consumer<String> added) {
    this.table = table;
    this.added = added;
    kind =
        Choices.of(
            "own-kind",
            Words.of("own.kind"),
            List.of(PreparationKind.values()),
            PreparationKind::title,
            k -> {});
    kind.setValue(PreparationKind.REST_SEAT);
    Button add = new Button(Words.of("own.add"));
    add.setId("own-add");
    add.setOnAction(e -> add());
    target.setOnAction(e -> add());
    reason.setOnAction(e -> add());
    FlowPane row = new FlowPane();
    row.getStyleClass().add("list-row");
    row.getChildren()
        .addAll(
            new Captioned(Words.of("own.kind"), kind, kind),
            captioned("teeth", teeth),
            captioned("surface", surface),
            captioned("target", target),
            captioned("reason", reason),
            add);
    Label heading = FieldBlock.small("hint-line");
    heading.setText(Words.of("own.heading"));
    setSpacing(4);
    getChildren().addAll(heading, row, error);
    say("");
  }

  private static TextField field(String part, int columns) {
    TextField f = new TextField();
    f.setId("own-" + part);
    f.setPrefColumnCount(columns);
    f.setAccessibleText(Words.of("own." + part));
    return f;
  }

  private static Captioned captioned(String part, TextField field) {
    return new Captioned(Words.of("own." + part), field, field);
  }

  void refresh() {
    teeth.setPromptText(
        table.notationProperty().get().format(Tooth.T35)
            + ", "
            + table.notationProperty().get().format(Tooth.T36));
  }

  private void add() {
    List<Tooth> named = new ArrayList<>();
    for (String word : teeth.getText().strip().split("[,;\\s]+")) {
      Optional<Tooth> t = table.notationProperty().get().parse(word);
      if (t.isEmpty()) {
        refuse(
            word.isEmpty() ? Words.of("own.teeth-needed") : Words.of("own.no-tooth", word), teeth);
        return;
      }
      if (!named.contains(t.get())) {
        named.add(t.get());
      }
    }
    if (named.stream().map(Tooth::arch).distinct().count() > 1) {
      refuse(Words.of("own.one-arch"), teeth);
      return;
    }
    if (target.getText().isBlank()) {
      refuse(Words.of("own.target-needed"), target);
      return;
    }
    say("");
    Case now = table.current();
    Preparations p = now.prescription().preparations();
    OwnPreparation own =
        new OwnPreparation(
            freshId(p),
            kind.getValue(),
            named,
            surface.getText().strip(),
            target.getText().strip(),
            reason.getText().strip());
    List<OwnPreparation> all = new ArrayList<>(p.own());
    all.add(own);
    table.apply(
        Words.of("edit.preparation-added"), now.with(now.prescription().with(p.withOwn(all))));
    List.of(teeth, surface, target, reason).forEach(TextField::clear);
    added.accept(PreparationPlan.OWN + own.id());
  }

  /** A number that neither an own preparation has nor a mark that outlived one. */
  private static String freshId(Preparations p) {
    Set<String> used = p.own().stream().map(OwnPreparation::id).collect(Collectors.toSet());
    p.marks().forEach(m -> used.add(m.key().replaceFirst("^" + PreparationPlan.OWN, "")));
    int n = 1;
    while (used.contains("p-" + n)) {
      n++;
    }
    return "p-" + n;
  }

  private void refuse(String sentence, TextField where) {
    say(sentence);
    where.requestFocus();
  }

  private void say(String sentence) {
    error.setText(sentence);
    error.setVisible(!sentence.isEmpty());
    error.setManaged(!sentence.isEmpty());
  }
}
