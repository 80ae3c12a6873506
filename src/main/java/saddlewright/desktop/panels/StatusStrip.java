package saddlewright.desktop.panels;

import javafx.beans.InvalidationListener;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import saddlewright.dentition.Arch;
import saddlewright.design.Subject;
import saddlewright.desktop.Step;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.safekeeping.Moment;
import saddlewright.desktop.safekeeping.Safety;
import saddlewright.desktop.sheet.Camera;
import saddlewright.rules.Report;
import saddlewright.rules.Severity;

/** Class of each arch in words, findings by severity, notation, zoom and whether all is saved. */
public final class StatusStrip extends StackPane {
  private static final double BETWEEN = 18;

  private final Worktable table;
  private final Camera camera;
  private final Button upper = button("status-upper");
  private final Button lower = button("status-lower");
  private final Button findings = button("status-findings");
  private final Label notation = label("status-notation");
  private final Label zoom = label("status-zoom");
  private final Label saved = label("status-saved");

  public StatusStrip(Worktable table, Camera camera) {
    this.table = table;
    this.camera = camera;
    getStyleClass().add("status-strip");
    setId("status");
    table.textSizeProperty().addListener(o -> arrange());
    arrange();
    for (Labeled l : new Labeled[] {upper, lower}) {
      l.setMinWidth(60);
    }
    for (Labeled l : new Labeled[] {findings, notation, zoom, saved}) {
      l.setMinWidth(USE_PREF_SIZE);
    }
    findings.setOnAction(e -> table.stepProperty().set(Step.REVIEW));
    upper.setOnAction(e -> table.select(Subject.of(Arch.UPPER)));
    lower.setOnAction(e -> table.select(Subject.of(Arch.LOWER)));
    InvalidationListener update = o -> update();
    table.assessmentProperty().addListener(update);
    table.notationProperty().addListener(update);
    table.unsavedProperty().addListener(update);
    table.safetyProperty().addListener(o -> saved.setText(saved()));
    table.fileProperty().addListener(update);
    InvalidationListener zoomed = o -> zoomed();
    camera.scaleProperty().addListener(zoomed);
    camera.trueScaleProperty().addListener(zoomed);
    zoomed();
    update();
  }

  private void update() {
    upper.setText(arch(Arch.UPPER));
    lower.setText(arch(Arch.LOWER));
    Report report = table.assessment().report();
    findings.setText(
        report.standing().isEmpty()
            ? Words.of("status.no-findings", report.questions().size())
            : Words.of(
                "status.findings",
                report.count(Severity.MUST),
                report.count(Severity.SHOULD),
                report.count(Severity.CONSIDER),
                report.questions().size()));
    notation.setText(Words.of(table.notationProperty().get()));
    saved.setText(saved());
  }

  /** In one line; large words in as many as they need. */
  private void arrange() {
    if (table.isTextLarge()) {
      FlowPane lines = new FlowPane(BETWEEN, 2, upper, lower, findings, notation, zoom, saved);
      getChildren().setAll(lines);
      return;
    }
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox line = new HBox(BETWEEN, upper, lower, gap, findings, notation, zoom, saved);
    line.setAlignment(Pos.CENTER_LEFT);
    getChildren().setAll(line);
  }

  private void zoomed() {
    zoom.setText(
        Words.of(
            "status.zoom",
            Math.round(100 * camera.scaleProperty().get() / camera.trueScaleProperty().get())));
  }

  private String saved() {
    if (!table.unsavedProperty().get()) {
      return Words.of(table.fileProperty().get().isPresent() ? "status.saved" : "status.no-file");
    }
    Safety safety = table.safetyProperty().get();
    return safety.trouble().isPresent()
        ? Words.of("status.not-safe")
        : safety
            .kept()
            .map(at -> Words.of("status.kept-safe", Moment.clock(at)))
            .orElseGet(() -> Words.of("status.unsaved"));
  }

  private String arch(Arch arch) {
    return Words.of(
        "status.arch",
        Words.capital(arch.code()),
        table.assessment().arch(arch).classification().label());
  }

  /** A part that leads to what it tells of. */
  private static Button button(String id) {
    Button b = new Button();
    b.setId(id);
    b.getStyleClass().add("status-part");
    return b;
  }

  private static Label label(String id) {
    Label l = new Label();
    l.setId(id);
    return l;
  }
}
