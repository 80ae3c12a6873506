package saddlewright.desktop.prescription;

import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import saddlewright.desktop.Step;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.preferences.MyDetails;
import saddlewright.prescription.FormField;

/** The step of the prescription: the form with its sections, and the ways out of the window. */
public final class PrescriptionPane extends BorderPane {
  /** What is done with the document as a whole. */
  public interface Actions {
    /** Shows its pages, to be printed. */
    void preview();

    /** Asks where to, and writes it. */
    void save();

    /** Lets it go out as a revision. */
    void issue();
  }

  /** Below this breadth the index would take the room that the fields need. */
  private static final double ROOM_FOR_INDEX = 760;

  private final Worktable table;
  private final FormPage form;
  private final SectionIndex index;
  private final GapTrail trail;
  private final Label title = new Label(Words.of("prescription.title"));
  private final Button save = new Button(Words.of("prescription.save"));

  public PrescriptionPane(Worktable table, MyDetails mine, GapTrail trail, Actions actions) {
    this.table = table;
    this.trail = trail;
    setId("prescription");
    getStyleClass().add("prescription");
    form = new FormPage(table, mine);
    index = new SectionIndex(form);
    setTop(head(actions));
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
    table.laidProperty().addListener(o -> begin());
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

  private HBox head(Actions actions) {
    title.getStyleClass().add("page-title");
    title.setMinWidth(USE_PREF_SIZE);
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    Button issue = new Button(Words.of("prescription.issue"));
    issue.setId("issue");
    issue.setOnAction(e -> actions.issue());
    issue.setMinWidth(USE_PREF_SIZE);
    save.setId("save-pdf");
    save.setOnAction(e -> actions.save());
    save.setMinWidth(USE_PREF_SIZE);
    Button preview = new Button(Words.of("prescription.preview"));
    preview.setId("preview");
    preview.getStyleClass().add("primary");
    preview.setOnAction(e -> actions.preview());
    preview.setMinWidth(USE_PREF_SIZE);
    HBox row = new HBox(10, title, index.menu(), gap, issue, save, preview);
    row.setAlignment(Pos.CENTER_LEFT);
    row.getStyleClass().add("prescription-head");
    return row;
  }

  private void fit() {
    boolean wide = getWidth() >= ROOM_FOR_INDEX;
    place(index, wide);
    place(index.menu(), !wide);
    // The list of the steps says already where one is, and the pages offer to be saved as well.
    place(title, wide);
    place(save, wide);
  }

  private static void place(Node n, boolean on) {
    n.setVisible(on);
    n.setManaged(on);
  }

  /** The form follows the case only while it is looked at. */
  private void refreshWhereSeen() {
    if (table.stepProperty().get() == Step.PRESCRIPTION) {
      form.refresh();
      index.refresh();
    }
  }

  /** Another case is begun with at its beginning. */
  private void begin() {
    form.begin();
    trail.begin();
  }

  private void go(FormField field) {
    table.soughtProperty().set(Optional.empty());
    form.go(field);
    trail.at(field);
  }
}
