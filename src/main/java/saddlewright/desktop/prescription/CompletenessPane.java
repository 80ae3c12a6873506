package saddlewright.desktop.prescription;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import saddlewright.dentition.Arch;
import saddlewright.design.ArchDesign;
import saddlewright.desktop.Step;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.AuditedVariable;
import saddlewright.prescription.Completeness;
import saddlewright.prescription.Completeness.Gap;
import saddlewright.prescription.Level;
import saddlewright.prescription.pdf.Unprintable;

/** How far the form is filled in, and what is missing: each gap leads to its field. */
public final class CompletenessPane extends VBox {
  private final Worktable table;
  private final Meter must = new Meter("must");
  private final Meter should = new Meter("should");
  private final Label audited = FieldBlock.small("hint-line");
  private final Label squares = FieldBlock.small("hint-line");
  private final VBox list = new VBox(2);
  private final Button next = new Button(Words.of("gaps.next"));
  private final Map<Gap, Hyperlink> links = new HashMap<>();
  private List<Gap> shown = List.of();

  public CompletenessPane(Worktable table, GapTrail trail) {
    this.table = table;
    setId("completeness");
    getStyleClass().addAll("panel", "completeness");
    Label title = new Label(Words.of("completeness.title"));
    title.getStyleClass().add("panel-title");
    next.setId("next-gap");
    next.setOnAction(e -> trail.onwards());
    audited.setId("audited");
    squares.setId("squares");
    squares.managedProperty().bind(squares.visibleProperty());
    list.getStyleClass().add("gaps");
    list.setId("gaps");
    ScrollPane scroll = new ScrollPane(list);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(title, must, should, audited, squares, new FlowPane(8, 6, next), scroll);
    table.assessmentProperty().addListener(o -> refreshWhereSeen());
    table.patientProperty().addListener(o -> refreshWhereSeen());
    table.stepProperty().addListener(o -> refreshWhereSeen());
    refresh();
  }

  private void refreshWhereSeen() {
    if (table.stepProperty().get() == Step.PRESCRIPTION) {
      refresh();
    }
  }

  private void refresh() {
    Completeness now = table.completeness();
    must.show(now.filled(Level.MUST), now.asked(Level.MUST));
    should.show(now.filled(Level.SHOULD), now.asked(Level.SHOULD));
    audited.setText(audit());
    squares.setText(
        Unprintable.sentence(Unprintable.of(table.current(), table.patientProperty().get())));
    squares.setVisible(!squares.getText().isEmpty());
    List<Gap> gaps = GapTrail.gaps(now);
    int musts = now.gaps(Level.MUST).size();
    next.setDisable(gaps.isEmpty());
    if (gaps.equals(shown) && !list.getChildren().isEmpty()) {
      return;
    }
    shown = List.copyOf(gaps);
    links.keySet().retainAll(gaps);
    List<Node> nodes = new ArrayList<>();
    if (musts > 0) {
      nodes.add(heading("gaps.must", musts, Level.MUST));
    }
    for (int i = 0; i < gaps.size(); i++) {
      if (i == musts) {
        nodes.add(heading("gaps.should", gaps.size() - musts, Level.SHOULD));
      }
      nodes.add(links.computeIfAbsent(gaps.get(i), this::link));
    }
    if (musts == 0) {
      Label done = FieldBlock.small("complete");
      done.setText(Words.of("gaps.none"));
      nodes.add(0, done);
    }
    list.getChildren().setAll(nodes);
  }

  private static Label heading(String key, int count, Level level) {
    Label l = FieldBlock.small("gap-heading");
    l.setText(Words.of(key, count));
    l.getStyleClass().add(level.code());
    return l;
  }

  private Hyperlink link(Gap gap) {
    boolean blank =
        gap.field()
            .item()
            .filter(i -> table.current().prescription().answer(i).isBlank())
            .isPresent();
    // Under this heading the name of a blank field says enough.
    Hyperlink link = new Hyperlink(blank ? gap.field().title() : gap.sentence());
    link.setId("gap-" + gap.field().key());
    link.getStyleClass().add("gap");
    link.setWrapText(true);
    link.setMaxWidth(Double.MAX_VALUE);
    link.setAccessibleText(
        Words.of(
            "gaps.heard", Words.of("level." + gap.level()), gap.sentence(), gap.field().title()));
    link.setOnAction(
        e -> {
          link.setVisited(false);
          table.goTo(gap.field());
        });
    return link;
  }

  private String audit() {
    List<String> out = new ArrayList<>();
    for (Arch arch : Arch.values()) {
      ArchDesign d = table.current().design(arch);
      if (!d.components().isEmpty()) {
        long in = Stream.of(AuditedVariable.values()).filter(v -> v.isIn(d)).count();
        out.add(
            Words.of(
                "completeness.audited-arch",
                Words.of("subject.arch." + arch.code()),
                in,
                AuditedVariable.values().length));
      }
    }
    return Words.of(
        "completeness.audited",
        out.isEmpty() ? Words.of("completeness.no-design") : String.join(", ", out));
  }
}
