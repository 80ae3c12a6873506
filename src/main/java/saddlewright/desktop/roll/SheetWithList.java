package saddlewright.desktop.roll;

import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.StackPane;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.focus.FocusOrder;
import saddlewright.desktop.sheet.SheetPane;

/** The sheet with the list of teeth and components before it, while that is wanted. */
public final class SheetWithList extends SplitPane {
  private static final double USUAL_SHARE = 0.36;
  private static final double NARROWEST = 220;

  private final Worktable table;
  private final SheetPane sheet;
  private final StackPane place = new StackPane();
  private final BooleanProperty shown = new SimpleBooleanProperty();
  private Optional<RollPane> roll = Optional.empty();
  private double share = USUAL_SHARE;

  /**
   * Both.
   *
   * @param drawing the sheet with what stands above it
   */
  public SheetWithList(Worktable table, SheetPane sheet, Node drawing) {
    this.table = table;
    this.sheet = sheet;
    getItems().add(drawing);
    place.setMinWidth(NARROWEST);
    SplitPane.setResizableWithParent(place, false);
    getStyleClass().add("sheet-with-list");
    shown.bindBidirectional(table.preferences().listShownProperty());
    shown.addListener(
        (o, was, is) -> {
          show(is);
          if (is && getScene() != null) {
            roll.ifPresent(RollPane::requestFocus);
          }
        });
    show(shown.get());
  }

  /** Where the list stands while it is shown. */
  public Node list() {
    return place;
  }

  private void show(boolean wanted) {
    if (wanted && roll.isEmpty()) {
      RollPane made = new RollPane(table, sheet);
      place.getChildren().setAll(made);
      roll = Optional.of(made);
    }
    if (wanted && getItems().size() == 1) {
      getItems().add(0, place);
      setDividerPositions(share);
    } else if (!wanted && getItems().size() == 2) {
      share = getDividerPositions()[0];
      Node focused = getScene() == null ? null : getScene().getFocusOwner();
      boolean inside = FocusOrder.isWithin(focused, place);
      getItems().remove(0);
      if (inside) {
        sheet.requestFocus();
      }
    }
  }
}
