package saddlewright.desktop.panels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import saddlewright.casefile.Cautions;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.Completeness;
import saddlewright.prescription.FormField;
import saddlewright.prescription.FormSection;
import saddlewright.prescription.Level;
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
    FormSection section = null;
    for (FormField f : FormField.ALL) {
      if (f.item().isEmpty() || f.level(p) == Level.NOT_ASKED) {
        continue;
      }
      if (f.section() != section) {
        section = f.section();
        form.heading(section.title());
      }
      Item item = f.item().get();
      form.text("rx-" + f.key(), f.title(), p.text(item), t -> set(item, t));
    }
    return form;
  }

  private void set(Item item, String text) {
    table.apply(
        Words.of("edit.prescription"),
        table.current().with(table.current().prescription().with(item, text.strip())));
  }

  private void completeness() {
    List<String> out = new ArrayList<>();
    Completeness.of(table.assessment(), Optional.empty())
        .gaps(Level.MUST)
        .forEach(g -> out.add(g.sentence()));
    long must = table.assessment().report().count(Severity.MUST);
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
}
