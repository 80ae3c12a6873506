package saddlewright.desktop.prescription;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.FlowPane;
import saddlewright.casefile.order.DocumentKind;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.casefile.order.Regime;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.FormField;

/** What the paper is, and by whose rules a prescription is complete. */
final class KindBlock extends FieldBlock {
  private final Worktable table;
  private final ComboBox<DocumentKind> kind;
  private final ComboBox<Regime> regime;
  private final Captioned rules;

  KindBlock(Worktable table) {
    super(FormField.of("document-kind"));
    this.table = table;
    kind =
        Choices.of(
            "rx-document-kind",
            field().title(),
            List.of(DocumentKind.values()),
            DocumentKind::title,
            k -> apply("edit.document-kind", now().withKind(k)));
    regime =
        Choices.of(
            "rx-regime",
            Words.of("rx.regime"),
            List.of(Regime.values()),
            Regime::title,
            r -> apply("edit.regime", now().withRegime(r)));
    rules = new Captioned(Words.of("rx.regime"), regime, regime);
    FlowPane row = new FlowPane(16, 8, new Captioned(Words.of("rx.kind"), kind, kind), rules);
    controls(row);
  }

  private PrescriptionDetails now() {
    return table.current().prescription();
  }

  private void apply(String name, PrescriptionDetails next) {
    table.apply(Words.of(name), table.current().with(next));
  }

  @Override
  boolean isWide() {
    return true;
  }

  @Override
  Node focus() {
    return kind;
  }

  @Override
  void refresh() {
    kind.setValue(now().kind());
    regime.setValue(now().regime());
    boolean ordered = now().kind() == DocumentKind.PRESCRIPTION;
    rules.setVisible(ordered);
    rules.setManaged(ordered);
    hint(Words.of(ordered ? "rx.regime.hint" : "rx.coursework.hint"));
  }
}
