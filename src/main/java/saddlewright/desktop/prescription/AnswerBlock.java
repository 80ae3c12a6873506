package saddlewright.desktop.prescription;

import java.util.List;
import javafx.scene.Node;
import saddlewright.casefile.order.Item;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.FormField;

/** A field that is answered in words. */
class AnswerBlock extends FieldBlock {
  private final Worktable table;
  private final Item item;
  private final AnswerField answer;

  AnswerBlock(Worktable table, Item item) {
    super(FormField.of(item));
    this.table = table;
    this.item = item;
    Typing typing = new Typing(table, Words.of("edit.field", field().title()));
    answer =
        new AnswerField(field(), item.form(), a -> typing.write(p -> p.with(item, a)), typing::end);
    controls(answer);
  }

  @Override
  boolean isWide() {
    return item.form() == Item.Form.LINES;
  }

  @Override
  Node focus() {
    return answer.focus();
  }

  @Override
  List<Node> inputs() {
    return answer.inputs();
  }

  @Override
  boolean isBlank() {
    return table.current().prescription().answer(item).isBlank();
  }

  @Override
  void refresh() {
    answer.show(table.current().prescription().answer(item));
  }
}
