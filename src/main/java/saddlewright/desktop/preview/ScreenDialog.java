package saddlewright.desktop.preview;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Dialog;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import saddlewright.desktop.Words;

/**
 * The box in which a user measures the screen: a line is made as long as a ruler says, and from
 * then on pages at 100 % are as large as on paper.
 */
final class ScreenDialog extends Dialog<ButtonType> {
  /** Length of the line, in mm. */
  private static final double LINE = 100;

  /** Resolutions that a screen can have, in pixels a millimetre: 50 to 300 an inch. */
  private static final double LEAST = 2;

  private static final double MOST = 12;

  /** How finely keys move the line: a tenth of a millimetre of its length, about. */
  private static final double STEP = 0.004;

  ScreenDialog(Window owner, ScreenScale screen) {
    initOwner(owner);
    setTitle(Words.of("screen.title"));
    DialogLook.wear(getDialogPane(), owner);
    Label how = new Label(Words.of("screen.how", (int) LINE));
    how.setWrapText(true);
    how.setMinHeight(Region.USE_PREF_SIZE);
    Slider slider = new Slider(LEAST, MOST, screen.pixelsPerMm());
    slider.setId("screen-slider");
    slider.setBlockIncrement(STEP);
    slider.setAccessibleText(Words.of("screen.how", (int) LINE));
    Region line = new Region();
    line.setId("screen-line");
    line.getStyleClass().add("screen-line");
    line.setMinHeight(18);
    line.minWidthProperty().bind(slider.valueProperty().multiply(LINE));
    line.maxWidthProperty().bind(line.minWidthProperty());
    VBox box = new VBox(14, how, line, slider);
    box.setAlignment(Pos.CENTER_LEFT);
    box.setPrefWidth(MOST * LINE / 2 + 40);
    getDialogPane().setContent(box);
    ButtonType take = new ButtonType(Words.of("screen.take"), ButtonBar.ButtonData.OK_DONE);
    ButtonType told = new ButtonType(Words.of("screen.told"), ButtonBar.ButtonData.LEFT);
    ButtonType cancel = new ButtonType(Words.of("print.cancel"), ButtonBar.ButtonData.CANCEL_CLOSE);
    getDialogPane().getButtonTypes().addAll(told, take, cancel);
    Node ok = getDialogPane().lookupButton(take);
    ok.setId("screen-take");
    setOnHidden(
        e -> {
          if (getResult() == take) {
            screen.measure(Optional.of(slider.getValue()));
          } else if (getResult() == told) {
            screen.measure(Optional.empty());
          }
        });
  }
}
