package saddlewright.desktop.preview;

import java.util.function.Consumer;
import javafx.event.ActionEvent;
import javafx.scene.Node;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Dialog;
import javafx.stage.Window;
import saddlewright.desktop.Words;

/** The box in which printing is ordered. */
final class PrintDialog extends Dialog<ButtonType> {
  PrintDialog(Window owner, PrintForm form, Consumer<String> sent) {
    initOwner(owner);
    setTitle(Words.of("print.title"));
    setResizable(true);
    ButtonType print = new ButtonType(Words.of("print.print"), ButtonBar.ButtonData.OK_DONE);
    ButtonType cancel = new ButtonType(Words.of("print.cancel"), ButtonBar.ButtonData.CANCEL_CLOSE);
    DialogLook.wear(getDialogPane(), owner);
    getDialogPane().setContent(form);
    getDialogPane().getButtonTypes().addAll(print, cancel);
    Node button = getDialogPane().lookupButton(print);
    button.setId("print-now");
    button.disableProperty().bind(form.readyProperty().not());
    button.addEventFilter(
        ActionEvent.ACTION,
        e -> {
          // It stays until the printer's queue has the pages, to say so where it does not take
          // them.
          e.consume();
          form.print(
              words -> {
                sent.accept(words);
                close();
              });
        });
  }
}
