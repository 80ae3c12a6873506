package saddlewright.desktop.prescription;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import saddlewright.casefile.order.Enclosure;
import saddlewright.casefile.order.Item;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.FormField;

/** What is sent along: a row each, or one answer for all where there is none. */
final class EnclosuresBlock extends FieldBlock {
  private final Worktable table;
  private final Typing typing;
  private final Rows<Enclosure> rows = new Rows<>(this::row);
  private final Button add = new Button(Words.of("enclosure.add"));
  private final AnswerField answer;

  EnclosuresBlock(Worktable table) {
    super(FormField.of(Item.ENCLOSED));
    this.table = table;
    typing = new Typing(table, Words.of("edit.field", field().title()));
    answer =
        new AnswerField(
            field(),
            Item.ENCLOSED.form(),
            a -> typing.write(p -> p.with(Item.ENCLOSED, a)),
            typing::end);
    add.setId("enclosure-add");
    add.setOnAction(
        e -> {
          typing.end();
          write(rows.plus(List.of(new Enclosure(Enclosure.Kind.IMPRESSION, 1, ""))));
          rows.go(Integer.MAX_VALUE, add);
        });
    controls(rows, add, answer);
  }

  private EnclosureRow row(int index) {
    return new EnclosureRow(
        index,
        change -> write(rows.with(index, change)),
        typing::end,
        () -> {
          typing.end();
          write(rows.without(index));
          rows.go(index, add);
        });
  }

  private void write(List<Enclosure> next) {
    typing.write(p -> p.withEnclosures(next));
  }

  @Override
  boolean isWide() {
    return true;
  }

  @Override
  Node focus() {
    return add;
  }

  @Override
  List<Node> inputs() {
    return answer.inputs();
  }

  @Override
  boolean isBlank() {
    return table.current().prescription().answer(Item.ENCLOSED).isBlank();
  }

  @Override
  void refresh() {
    List<Enclosure> now = table.current().prescription().enclosures();
    rows.show(now);
    answer.show(table.current().prescription().answer(Item.ENCLOSED));
    boolean spoken = now.isEmpty() || !isBlank();
    answer.setVisible(spoken);
    answer.setManaged(spoken);
    hint(spoken && now.isEmpty() ? Words.of("enclosure.hint") : "");
  }
}
