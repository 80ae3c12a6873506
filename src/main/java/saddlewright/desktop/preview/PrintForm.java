package saddlewright.desktop.preview;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.Spinner;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;
import saddlewright.prescription.pdf.print.PagePrinter;
import saddlewright.prescription.pdf.print.PrintFit;
import saddlewright.prescription.pdf.print.PrintOrder;
import saddlewright.prescription.pdf.print.Printer;

/** Which printer, which pages, how often; and whether they come out whole and at true scale. */
final class PrintForm extends VBox {
  private static final int MOST_COPIES = 99;
  private static final double WIDTH = 520;

  private final Document document;
  private final Backstage backstage;
  private final String name;
  private final ComboBox<Printer> printers = new ComboBox<>();
  private final Spinner<Integer> copies = new Spinner<>(1, MOST_COPIES, 1);
  private final RadioButton all = new RadioButton(Words.of("print.all"));
  private final RadioButton currentPage = new RadioButton(Words.of("print.current"));
  private final RadioButton some = new RadioButton(Words.of("print.from"));
  private final Spinner<Integer> first;
  private final Spinner<Integer> last;
  private final CheckBox bothSides = new CheckBox(Words.of("print.both-sides"));
  private final Label verdict = new Label();
  private final CheckBox accepted = new CheckBox(Words.of("print.accept"));
  private final GridPane grid = new GridPane();
  private final ReadOnlyBooleanWrapper ready = new ReadOnlyBooleanWrapper(false);
  private final AtomicInteger asked = new AtomicInteger();
  private Optional<PrintFit> fit = Optional.empty();
  private boolean sending;

  /**
   * Asks the system for its printers, which may take a while.
   *
   * @param page the page looked at, from 0
   * @param name what the printer's queue calls the document
   */
  PrintForm(
      Document document,
      Backstage backstage,
      Supplier<List<Printer>> installed,
      int page,
      String name) {
    super(12);
    this.document = document;
    this.backstage = backstage;
    this.name = name;
    setId("print-form");
    getStyleClass().add("print-form");
    setPrefWidth(WIDTH);
    first = new Spinner<>(1, document.count(), page + 1);
    last = new Spinner<>(1, document.count(), document.count());
    ToggleGroup range = new ToggleGroup();
    all.setToggleGroup(range);
    currentPage.setToggleGroup(range);
    some.setToggleGroup(range);
    all.setSelected(true);
    currentPage.setUserData(page);
    verdict.setId("print-verdict");
    verdict.setWrapText(true);
    verdict.setMinHeight(USE_PREF_SIZE);
    verdict.setText(Words.of("print.looking"));
    accepted.setId("print-accept");
    accepted.setWrapText(true);
    printers.setId("print-printers");
    copies.setId("print-copies");
    first.setId("print-first");
    last.setId("print-last");
    layOut();
    printers.valueProperty().addListener(o -> ask());
    range.selectedToggleProperty().addListener(o -> ask());
    first.valueProperty().addListener(o -> choseSome());
    last.valueProperty().addListener(o -> choseSome());
    accepted.selectedProperty().addListener(o -> decide());
    // The lookup may wait for the network; a thread of its own keeps pages coming meanwhile.
    behind(installed, this::offer);
  }

  private void layOut() {
    grid.getStyleClass().add("print-grid");
    for (Spinner<Integer> s : List.of(copies, first, last)) {
      s.setEditable(true);
      s.setPrefWidth(84);
      s.getEditor().focusedProperty().addListener((o, was, now) -> commit(s));
    }
    printers.setMaxWidth(Double.MAX_VALUE);
    printers.setPrefWidth(WIDTH - 120);
    Label to = new Label(Words.of("print.to"));
    HBox between = new HBox(8, some, first, to, last);
    between.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
    currentPage.setText(Words.of("print.current", (Integer) currentPage.getUserData() + 1));
    row(0, "print.printer", printers);
    row(1, "print.copies", copies);
    row(2, "print.pages", new VBox(7, all, currentPage, between));
    row(3, "", bothSides);
    show(accepted, false);
    show(bothSides, false);
    getChildren().addAll(grid, verdict, accepted);
    show(grid, false);
  }

  private void row(int row, String key, Region control) {
    if (!key.isEmpty()) {
      Label l = new Label(Words.of(key));
      l.setMinWidth(USE_PREF_SIZE);
      l.setLabelFor(control);
      grid.add(l, 0, row);
      GridPane.setValignment(l, javafx.geometry.VPos.TOP);
    }
    grid.add(control, 1, row);
  }

  private static void commit(Spinner<Integer> s) {
    try {
      s.getValueFactory().setValue(Integer.valueOf(s.getEditor().getText().strip()));
    } catch (NumberFormatException e) {
      s.getEditor().setText(String.valueOf(s.getValue()));
    }
  }

  private static void show(Region r, boolean shown) {
    r.setVisible(shown);
    r.setManaged(shown);
  }

  private static <T> void behind(Supplier<T> work, Consumer<T> then) {
    Thread t =
        new Thread(
            () -> {
              T made = work.get();
              Platform.runLater(() -> then.accept(made));
            },
            "printers");
    t.setDaemon(true);
    t.start();
  }

  private void offer(List<Printer> found) {
    if (found.isEmpty()) {
      say("fit-cut", Words.of("print.none"));
      resize();
      return;
    }
    show(grid, true);
    printers.getItems().setAll(found);
    printers.setValue(found.get(0));
    resize();
    printers.requestFocus();
  }

  private void choseSome() {
    if (some.isSelected()) {
      ask();
    } else {
      some.setSelected(true);
    }
  }

  /** Whether it may be printed as it stands. */
  ReadOnlyBooleanProperty readyProperty() {
    return ready.getReadOnlyProperty();
  }

  private PrintOrder order() {
    int from = 0;
    int to = document.count() - 1;
    if (currentPage.isSelected()) {
      from = (Integer) currentPage.getUserData();
      to = from;
    } else if (some.isSelected()) {
      from = Math.min(first.getValue(), last.getValue()) - 1;
      to = Math.max(first.getValue(), last.getValue()) - 1;
    }
    return new PrintOrder(
        name, from, to, copies.getValue(), bothSides.isVisible() && bothSides.isSelected());
  }

  /** Has the printer compared with the pages. */
  private void ask() {
    Printer printer = printers.getValue();
    if (printer == null) {
      return;
    }
    fit = Optional.empty();
    accepted.setSelected(false);
    say("", Words.of("print.measuring"));
    decide();
    int mine = asked.incrementAndGet();
    PrintOrder order = order();
    backstage.make(
        Backstage.Urgency.PAGE_IN_VIEW,
        () -> asked.get() == mine,
        () -> new Answer(PrintFit.of(printer, document.images(), order), printer.printsBothSides()),
        this::answer,
        e -> say("fit-cut", Words.of("print.not-asked", printer.name())));
  }

  private record Answer(PrintFit fit, boolean bothSides) {}

  private void answer(Answer a) {
    fit = Optional.of(a.fit());
    show(bothSides, a.bothSides());
    if (a.fit().verdict() == PrintFit.Verdict.TRUE) {
      say("fit-true", Words.of("print.true"));
    } else {
      boolean hint = a.fit().verdict() == PrintFit.Verdict.UNSURE;
      say(hint ? "fit-unsure" : "fit-cut", "! " + String.join("\n\n! ", a.fit().sentences()));
    }
    decide();
    resize();
  }

  private void say(String style, String words) {
    verdict.getStyleClass().removeAll("fit-true", "fit-unsure", "fit-cut");
    if (!style.isEmpty()) {
      verdict.getStyleClass().add(style);
    }
    verdict.setText(words);
  }

  private void decide() {
    boolean cut = fit.map(f -> f.verdict() == PrintFit.Verdict.CUT).orElse(false);
    show(accepted, cut);
    ready.set(
        !sending
            && fit.map(
                    f ->
                        f.verdict() != PrintFit.Verdict.NO_PAPER && (!cut || accepted.isSelected()))
                .orElse(false));
  }

  private void resize() {
    if (getScene() != null && getScene().getWindow() != null) {
      getScene().getWindow().sizeToScene();
    }
  }

  /** Prints; says afterwards what became of it. */
  void print(Consumer<String> done) {
    commit(copies);
    PrintOrder order = order();
    Printer printer = printers.getValue();
    sending = true;
    say("", Words.of("print.sending", printer.name()));
    decide();
    behind(
        () -> {
          try {
            PagePrinter.print(document.pdf(), printer, order);
            return Optional.<String>empty();
          } catch (PagePrinter.NotPrinted e) {
            return Optional.of(e.getMessage());
          }
        },
        problem -> {
          sending = false;
          decide();
          if (problem.isEmpty()) {
            done.accept(Words.of("print.sent", order.last() - order.first() + 1, printer.name()));
          } else {
            say("fit-cut", "! " + problem.get());
            resize();
          }
        });
  }
}
