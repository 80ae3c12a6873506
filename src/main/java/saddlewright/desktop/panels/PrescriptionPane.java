package saddlewright.desktop.panels;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import javafx.beans.InvalidationListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import saddlewright.casefile.Cautions;
import saddlewright.casefile.PrescriptionDetails;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.rules.Report;
import saddlewright.rules.Severity;

/** What the laboratory is told besides the design, and what is still missing from it. */
public final class PrescriptionPane extends ScrollPane {
  private final Worktable table;
  private final VBox missing = new VBox(4);
  private PrescriptionDetails built;

  public PrescriptionPane(Worktable table, Runnable export) {
    this.table = table;
    setId("prescription");
    getStyleClass().add("prescription");
    setFitToWidth(true);
    VBox page = new VBox(14);
    page.getStyleClass().add("prescription-page");
    page.setMaxWidth(720);
    VBox holder = new VBox(page);
    holder.setAlignment(javafx.geometry.Pos.TOP_CENTER);
    holder.getStyleClass().add("prescription-desk");
    setContent(holder);
    InvalidationListener update = o -> update(page, export);
    table.assessmentProperty().addListener(update);
    update(page, export);
  }

  private void update(VBox page, Runnable export) {
    completeness();
    if (table.current().prescription().equals(built)) {
      return;
    }
    built = table.current().prescription();
    String focus =
        getScene() == null || getScene().getFocusOwner() == null
            ? ""
            : String.valueOf(getScene().getFocusOwner().getId());
    Label title = new Label(Words.of("prescription.title"));
    title.getStyleClass().add("page-title");
    Label cautions = new Label(Cautions.LINE);
    cautions.setWrapText(true);
    cautions.setMinHeight(USE_PREF_SIZE);
    cautions.getStyleClass().add("caution");
    Button pdf = new Button(Words.of("prescription.export"));
    pdf.setId("export-pdf");
    pdf.getStyleClass().add("primary");
    pdf.setOnAction(e -> export.run());
    pdf.setMinWidth(USE_PREF_SIZE);
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    Label heading = new Label(Words.of("prescription.missing"));
    heading.getStyleClass().add("form-heading");
    page.getChildren().setAll(new HBox(16, title, gap, pdf), fields(), heading, missing, cautions);
    if (focus.startsWith("rx-")) {
      javafx.scene.Node n = page.lookup("#" + focus);
      if (n != null) {
        n.requestFocus();
      }
    }
  }

  private Form fields() {
    Form form = new Form();
    PrescriptionDetails p = table.current().prescription();
    form.heading(Words.of("prescription.who"));
    text(form, "prescriber", p.prescriber(), (d, t) -> with(d, t, 0));
    text(form, "practice", p.practice(), (d, t) -> with(d, t, 1));
    text(form, "laboratory", p.laboratory(), (d, t) -> with(d, t, 2));
    text(form, "date-issued", p.dateIssued(), (d, t) -> with(d, t, 3));
    text(form, "date-required", p.dateRequired(), (d, t) -> with(d, t, 4));
    form.heading(Words.of("prescription.materials"));
    text(form, "alloy", p.frameworkAlloy(), (d, t) -> with(d, t, 5));
    text(form, "base", p.baseMaterial(), (d, t) -> with(d, t, 6));
    text(form, "teeth", p.toothMaterial(), (d, t) -> with(d, t, 7));
    text(form, "shade", p.shade(), (d, t) -> with(d, t, 8));
    form.heading(Words.of("prescription.sent"));
    text(form, "enclosures", p.enclosures(), (d, t) -> with(d, t, 9));
    text(form, "disinfection", p.disinfection(), (d, t) -> with(d, t, 10));
    form.area(
        "rx-instructions",
        Words.of("rx.instructions"),
        p.instructions(),
        3,
        t -> set((d, v) -> with(d, v, 11), t));
    return form;
  }

  private void text(
      Form form,
      String id,
      String now,
      BiFunction<PrescriptionDetails, String, PrescriptionDetails> with) {
    form.text("rx-" + id, Words.of("rx." + id), now, t -> set(with, t));
  }

  private void set(BiFunction<PrescriptionDetails, String, PrescriptionDetails> with, String text) {
    PrescriptionDetails next = with.apply(table.current().prescription(), text.strip());
    table.apply(Words.of("edit.prescription"), table.current().with(next));
  }

  /** The details with the text of one place, in the order of the record, replaced. */
  private static PrescriptionDetails with(PrescriptionDetails d, String text, int place) {
    List<String> all =
        new ArrayList<>(
            List.of(
                d.prescriber(),
                d.practice(),
                d.laboratory(),
                d.dateIssued(),
                d.dateRequired(),
                d.frameworkAlloy(),
                d.baseMaterial(),
                d.toothMaterial(),
                d.shade(),
                d.enclosures(),
                d.disinfection(),
                d.instructions()));
    all.set(place, text);
    return new PrescriptionDetails(
        all.get(0),
        all.get(1),
        all.get(2),
        all.get(3),
        all.get(4),
        all.get(5),
        all.get(6),
        all.get(7),
        all.get(8),
        all.get(9),
        all.get(10),
        all.get(11));
  }

  private void completeness() {
    PrescriptionDetails p = table.current().prescription();
    List<String> out = new ArrayList<>();
    require(out, "prescriber", p.prescriber());
    require(out, "laboratory", p.laboratory());
    require(out, "date-issued", p.dateIssued());
    require(out, "date-required", p.dateRequired());
    require(out, "alloy", p.frameworkAlloy());
    require(out, "base", p.baseMaterial());
    require(out, "teeth", p.toothMaterial());
    require(out, "shade", p.shade());
    require(out, "disinfection", p.disinfection());
    boolean empty =
        table.current().upperDesign().components().isEmpty()
            && table.current().lowerDesign().components().isEmpty();
    if (empty) {
      out.add(Words.of("prescription.no-design"));
    }
    Report report = table.assessment().report();
    long must = report.count(Severity.MUST);
    if (must > 0) {
      out.add(Words.of("prescription.must", must));
    }
    missing.getChildren().clear();
    if (out.isEmpty()) {
      out.add(Words.of("prescription.complete"));
    }
    for (String line : out) {
      Label l = new Label(line);
      l.setWrapText(true);
      l.getStyleClass().add("missing");
      missing.getChildren().add(l);
    }
  }

  private static void require(List<String> out, String field, String value) {
    if (value.isBlank()) {
      out.add(Words.of("prescription.lacks", Words.of("rx." + field)));
    }
  }
}
