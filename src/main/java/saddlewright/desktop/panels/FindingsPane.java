package saddlewright.desktop.panels;

import java.util.List;
import java.util.Locale;
import javafx.beans.InvalidationListener;
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
    list.getChildren().clear();
    List<Report.Entry> entries = table.assessment().report().entries();
    for (Severity severity : Severity.values()) {
      List<Report.Entry> of =
          entries.stream()
              .filter(e -> e.stands() && e.finding().severity() == severity)
              .toList();
      group(Words.of("findings." + severity.code(), of.size()), of);
    }
    group(
        Words.of("findings.waived"), entries.stream().filter(e -> !e.stands()).toList());
    if (entries.isEmpty()) {
      Label none = new Label(Words.of("findings.none"));
      none.setId("no-findings");
      none.setWrapText(true);
      none.getStyleClass().add("empty");
      list.getChildren().add(none);
    }
    title.setText(
        entries.isEmpty()
            ? Words.of("findings.title")
            : Words.of("findings.title-count", table.assessment().report().standing().size()));
    related();
    scroll.setVvalue(at);
  }

  private void group(String heading, List<Report.Entry> entries) {
    if (entries.isEmpty()) {
      return;
    }
    Label h = new Label(heading);
    h.getStyleClass()
        .addAll(
            "finding-heading",
            "severity-" + entries.get(0).finding().severity().code().toLowerCase(Locale.ROOT));
    list.getChildren().add(h);
    entries.forEach(e -> list.getChildren().add(new FindingCard(table, e)));
  }

  /** Marks the findings that are about what is selected. */
  private void related() {
    list.getChildren().stream()
        .filter(FindingCard.class::isInstance)
        .map(FindingCard.class::cast)
        .forEach(c -> c.markRelated(table.selectionProperty().get()));
  }
}
