package saddlewright.desktop.prescription;

import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import saddlewright.desktop.MyDetails;
import saddlewright.desktop.Step;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.FormField;

/** The step of the prescription: the form with its sections, and the ways out of the window. */
public final class PrescriptionPane extends BorderPane {
  /** Below this breadth the index would take the room that the fields need. */
  private static final double ROOM_FOR_INDEX = 760;

  private final Worktable table;
  private final FormPage form;
  private final SectionIndex index;
  private final GapTrail trail;
  private final Label title = new Label(Words.of("prescription.title"));

  public PrescriptionPane(Worktable table, MyDetails mine, GapTrail trail, Runnable export) {
    this.table = table;
    this.trail = trail;
    setId("prescription");
    getStyleClass().add("prescription");
    form = new FormPage(table, mine);
    index = new SectionIndex(form);
    setTop(head(export));
    setCenter(form);
    setLeft(index);
    widthProperty().addListener(o -> fit());
    fit();
    InvalidationListener update = o -> refreshWhereSeen();
    table.assessmentProperty().addListener(update);
    table.patientProperty().addListener(update);
    table.notationProperty().addListener(update);
    table.fileProperty().addListener(update);
    table.stepProperty().addListener(update);
    table.soughtProperty().addListener(o -> table.soughtProperty().get().ifPresent(this::go));
    sceneProperty()
        .addListener(
            (o, was, scene) -> {
              if (scene != null) {
                scene.focusOwnerProperty().addListener(x -> form.focused().ifPresent(trail::at));
              }
            });
    refreshWhereSeen();
  }

  private HBox head(Runnable export) {
    title.getStyleClass().add("page-title");
    title.setMinWidth(USE_PREF_SIZE);
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    Button pdf = new Button(Words.of("prescription.export"));
    pdf.setId("export-pdf");
    pdf.getStyleClass().add("primary");
    pdf.setOnAction(e -> export.run());
    pdf.setMinWidth(USE_PREF_SIZE);
    HBox head = new HBox(12, title, index.menu(), gap, pdf);
    head.setAlignment(Pos.CENTER_LEFT);
    head.getStyleClass().add("prescription-head");
    return head;
  }

  private void fit() {
    boolean wide = getWidth() >= ROOM_FOR_INDEX;
    index.setVisible(wide);
    index.setManaged(wide);
    index.menu().setVisible(!wide);
    index.menu().setManaged(!wide);
    // The list of the steps says already where one is.
    title.setVisible(wide);
    title.setManaged(wide);
  }

  /** The form follows the case only while it is looked at. */
  private void refreshWhereSeen() {
    if (table.stepProperty().get() == Step.PRESCRIPTION) {
      form.refresh();
      index.refresh();
    }
  }

  private void go(FormField field) {
    table.soughtProperty().set(Optional.empty());
    form.go(field);
    trail.at(field);
  }
}
