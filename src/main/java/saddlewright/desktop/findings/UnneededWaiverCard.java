package saddlewright.desktop.findings;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleBook;
import saddlewright.rules.Waiver;

/** A waiver that answers no finding any more, and can be taken out of the case. */
final class UnneededWaiverCard extends VBox {
  UnneededWaiverCard(Worktable table, Waiver waiver) {
    getStyleClass().addAll("finding", "unneeded");
    Optional<Rule> rule = RuleBook.find(waiver.findingKey().replaceAll("@.*", ""));
    Button remove = new Button(Words.of("unneeded.remove"));
    remove.getStyleClass().add("remove-waiver");
    remove.setOnAction(
        e ->
            table.apply(
                Words.of("edit.remove-waiver"),
                table.current().withWaivers(without(table, waiver))));
    getChildren()
        .addAll(
            ReportCard.words(rule.map(Rule::claim).orElse(waiver.findingKey())),
            ReportCard.words(
                Words.of(
                    "finding.waived-by", waiver.role(), waiver.date().toString(), waiver.reason())),
            remove);
  }

  private static List<Waiver> without(Worktable table, Waiver waiver) {
    return table.current().waivers().stream().filter(w -> !w.equals(waiver)).toList();
  }
}
