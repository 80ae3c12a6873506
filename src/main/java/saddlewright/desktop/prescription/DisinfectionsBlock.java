package saddlewright.desktop.prescription;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import saddlewright.casefile.order.Disinfection;
import saddlewright.casefile.order.Enclosure;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.FormField;

/** How what was in the mouth was disinfected: a row each, proposed for each impression enclosed. */
final class DisinfectionsBlock extends FieldBlock {
  private final Worktable table;
  private final Typing typing;
  private final Rows<Disinfection> rows = new Rows<>(this::row);
  private final Button add = new Button(Words.of("disinfection.add"));
  private final Button propose = new Button();
  private final AnswerField answer;

  DisinfectionsBlock(Worktable table) {
    super(FormField.of(Item.DISINFECTED));
    this.table = table;
    typing = new Typing(table, Words.of("edit.field", field().title()));
    answer =
        new AnswerField(
            field(),
            Item.DISINFECTED.form(),
            a -> typing.write(p -> p.with(Item.DISINFECTED, a)),
            typing::end);
    add.setId("disinfection-add");
    add.setOnAction(e -> append(List.of(of(Words.of("disinfection.new")))));
    propose.setId("disinfection-propose");
    propose.setOnAction(e -> append(unanswered(table.current().prescription())));
    controls(rows, new FlowPane(8, 6, propose, add), answer);
  }

  private static Disinfection of(String what) {
    return new Disinfection(what, "", Optional.empty(), "", Optional.empty());
  }

  private void append(List<Disinfection> more) {
    typing.end();
    int first = table.current().prescription().disinfections().size();
    write(rows.plus(more));
    rows.go(first, add);
  }

  /** A row for each impression enclosed of which nothing is said yet. */
  static List<Disinfection> unanswered(PrescriptionDetails p) {
    return p.enclosures().stream()
        .filter(e -> e.kind() == Enclosure.Kind.IMPRESSION)
        .map(DisinfectionsBlock::name)
        .filter(n -> p.disinfections().stream().noneMatch(d -> d.what().equalsIgnoreCase(n)))
        .distinct()
        .map(DisinfectionsBlock::of)
        .toList();
  }

  private static String name(Enclosure e) {
    String kind = e.kind().words();
    return e.detail().isBlank()
        ? kind
        : e.detail().contains(kind) ? e.detail() : kind + ": " + e.detail();
  }

  private DisinfectionRow row(int index) {
    return new DisinfectionRow(
        index,
        change -> write(rows.with(index, change)),
        typing::end,
        () -> {
          typing.end();
          write(rows.without(index));
          rows.go(index, add);
        });
  }

  private void write(List<Disinfection> next) {
    typing.write(p -> p.withDisinfections(next));
  }

  @Override
  boolean isWide() {
    return true;
  }

  @Override
  Node focus() {
    return propose.isManaged() ? propose : add;
  }

  @Override
  List<Node> inputs() {
    return answer.inputs();
  }

  @Override
  boolean isBlank() {
    return table.current().prescription().answer(Item.DISINFECTED).isBlank();
  }

  @Override
  void refresh() {
    PrescriptionDetails p = table.current().prescription();
    rows.show(p.disinfections());
    answer.show(p.answer(Item.DISINFECTED));
    boolean spoken = p.disinfections().isEmpty() || !isBlank();
    answer.setVisible(spoken);
    answer.setManaged(spoken);
    int proposed = unanswered(p).size();
    propose.setText(Words.of("disinfection.propose", proposed));
    propose.setVisible(proposed > 0);
    propose.setManaged(proposed > 0);
    hint(p.disinfections().isEmpty() ? Words.of("disinfection.hint") : "");
  }
}
