package saddlewright.desktop.prescription;

import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.FlowPane;
import saddlewright.casefile.order.Enclosure;
import saddlewright.desktop.Words;

/** One thing that is sent along: what, how many, which. */
final class EnclosureRow implements Rows.Row<Enclosure> {
  private final ComboBox<Enclosure.Kind> kind;
  private final RowText count;
  private final RowText detail;
  private final FlowPane row = new FlowPane();

  EnclosureRow(
      int index, Consumer<UnaryOperator<Enclosure>> change, Runnable left, Runnable remove) {
    String id = "enclosure-" + index;
    String number = Integer.toString(index + 1);
    kind =
        Choices.of(
            id + "-kind",
            Words.of("enclosure.heard", number, Words.of("enclosure.kind")),
            java.util.List.of(Enclosure.Kind.values()),
            k -> Words.capital(k.words()),
            k -> change.accept(e -> new Enclosure(k, e.count(), e.detail())));
    count =
        new RowText(
                id + "-count",
                Words.of("enclosure.heard", number, Words.of("enclosure.count")),
                3,
                s -> !s.isEmpty() && Integer.parseInt(s) > 0,
                s -> change.accept(e -> new Enclosure(e.kind(), Integer.parseInt(s), e.detail())),
                left)
            .digits(3);
    detail =
        new RowText(
            id + "-detail",
            Words.of("enclosure.heard", number, Words.of("enclosure.detail")),
            23,
            s -> true,
            s -> change.accept(e -> new Enclosure(e.kind(), e.count(), s)),
            left);
    detail.setPromptText(Words.of("enclosure.detail.prompt"));
    Button away = new Button(Words.of("row.remove"));
    away.setId(id + "-remove");
    away.setAccessibleText(Words.of("enclosure.heard", number, Words.of("row.remove")));
    away.setOnAction(e -> remove.run());
    row.getStyleClass().add("list-row");
    row.getChildren()
        .addAll(
            new Captioned(Words.of("enclosure.kind"), kind, kind),
            new Captioned(Words.of("enclosure.count"), count, count),
            new Captioned(Words.of("enclosure.detail"), detail, detail),
            away);
  }

  @Override
  public Node node() {
    return row;
  }

  @Override
  public Node focus() {
    return kind;
  }

  @Override
  public void show(Enclosure e) {
    kind.setValue(e.kind());
    count.show(Integer.toString(e.count()));
    detail.show(e.detail());
  }
}
