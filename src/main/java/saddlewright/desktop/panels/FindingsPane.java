package saddlewright.desktop.panels;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.rules.Report;
import saddlewright.rules.Severity;

/** The findings by severity, each with its reasons, remedies and waiver. */
public final class FindingsPane extends VBox {
  private final Worktable table;
  private final Label title = new Label(Words.of("findings.title"));
  private final List<FindingCard> cards = new ArrayList<>();
  private final VBox list = new VBox();
  private final ScrollPane scroll = new ScrollPane(list);

  public FindingsPane(Worktable table) {
    this.table = table;
    setId("findings");
    getStyleClass().add("panel");
    title.getStyleClass().add("panel-title");
    list.getStyleClass().add("finding-list");
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(title, scroll);
    InvalidationListener rebuild = o -> rebuild();
    table.assessmentProperty().addListener(rebuild);
    table.findingProperty().addListener(rebuild);
    table.selectionProperty().addListener(o -> related());
    rebuild();
  }

  private void rebuild() {
    double at = scroll.getVvalue();
    List<FindingCard> before = List.copyOf(cards);
    cards.clear();
    List<Node> wanted = new ArrayList<>();
    List<Report.Entry> entries = table.assessment().report().entries();
    for (Severity severity : Severity.values()) {
      List<Report.Entry> of =
          entries.stream().filter(e -> e.stands() && e.finding().severity() == severity).toList();
      group(wanted, before, Words.of("findings." + severity.code(), of.size()), of);
    }
    group(
        wanted,
        before,
        Words.of("findings.waived"),
        entries.stream().filter(e -> !e.stands()).toList());
    if (entries.isEmpty()) {
      Label none = new Label(Words.of("findings.none"));
      none.setId("no-findings");
      none.setWrapText(true);
      none.getStyleClass().add("empty");
      wanted.add(none);
    }
    list.getChildren().setAll(wanted);
    title.setText(
        entries.isEmpty()
            ? Words.of("findings.title")
            : Words.of("findings.title-count", table.assessment().report().standing().size()));
    related();
    scroll.setVvalue(at);
  }

  /** Adds a group; cards that need not change are kept. */
  private void group(
      List<Node> wanted, List<FindingCard> before, String heading, List<Report.Entry> entries) {
    if (entries.isEmpty()) {
      return;
    }
    Label h = new Label(heading);
    h.getStyleClass()
        .addAll("finding-heading", "severity-" + entries.get(0).finding().severity().code());
    wanted.add(h);
    for (Report.Entry e : entries) {
      boolean open = table.findingProperty().get().filter(e.finding().key()::equals).isPresent();
      FindingCard card =
          before.stream()
              .filter(c -> c.shows(e, open))
              .findFirst()
              .orElseGet(() -> new FindingCard(table, e));
      cards.add(card);
      wanted.add(card);
    }
  }

  /** Marks the findings that are about what is selected. */
  private void related() {
    cards.forEach(c -> c.markRelated(table.selectionProperty().get()));
  }
}
