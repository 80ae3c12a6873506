package saddlewright.desktop.safekeeping;

import java.time.ZonedDateTime;
import java.util.function.Consumer;
import javafx.collections.ListChangeListener;
import javafx.collections.WeakListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;
import saddlewright.desktop.safekeeping.FoundWorks.Decision;
import saddlewright.desktop.safekeeping.FoundWorks.Line;

/** The offer of work that was not saved when the program ended. */
public final class RecoveryPane extends VBox {
  private final FoundWorks found;
  private final Consumer<FoundWork> open;
  private final boolean always;
  private final Label why = words("", "hint-line");
  private final VBox lines = new VBox();
  private final ListChangeListener<Line> following = c -> fill();

  /**
   * The offer on a page; it is not seen when there is nothing to offer.
   *
   * @param open lays it on a desk
   */
  public static RecoveryPane onPage(FoundWorks found, Consumer<FoundWork> open) {
    RecoveryPane p = new RecoveryPane(found, open, false);
    p.setId("recovery");
    return p;
  }

  /** The offer in a window of its own, where it says so when there is nothing. */
  public static ScrollPane inWindow(FoundWorks found, Consumer<FoundWork> open) {
    RecoveryPane p = new RecoveryPane(found, open, true);
    p.setId("found-work");
    ScrollPane scroll = new ScrollPane(p);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("found-work");
    return scroll;
  }

  private RecoveryPane(FoundWorks found, Consumer<FoundWork> open, boolean always) {
    this.found = found;
    this.open = open;
    this.always = always;
    getStyleClass().add("recovery");
    Label heading = words(Words.of("safe.heading"), "form-heading");
    lines.getStyleClass().add("recovery-lines");
    getChildren().addAll(heading, why, lines);
    found.lines().addListener(new WeakListChangeListener<>(following));
    fill();
  }

  private void fill() {
    boolean any = !found.lines().isEmpty();
    setVisible(any || always);
    setManaged(any || always);
    lines.getChildren().setAll(found.lines().stream().map(this::line).toList());
    why.setText(Words.of(any ? "safe.why" : "safe.none-found"));
  }

  private Node line(Line line) {
    return line.decision() == Decision.NONE ? offered(line) : decided(line);
  }

  private Node offered(Line line) {
    FoundWork w = line.work();
    ZonedDateTime now = ZonedDateTime.now();
    String name = FoundWords.name(w);
    VBox box = new VBox();
    box.getStyleClass().add("recovery-line");
    box.getChildren().add(words(name, "recovery-name"));
    box.getChildren()
        .add(
            words(
                FoundWords.reference(w).map(r -> r + " · ").orElse("") + FoundWords.place(w),
                "recovery-place"));
    box.getChildren().add(words(FoundWords.last(w, now), "recovery-last"));
    FoundWords.disk(w, now).ifPresent(d -> box.getChildren().add(words(d, "recovery-disk")));
    FlowPane choices = new FlowPane();
    choices.getStyleClass().add("recovery-choices");
    if (w.copy().isPresent()) {
      Button take = button("safe.open", name, () -> open.accept(w));
      take.getStyleClass().add("primary");
      choices.getChildren().add(take);
    }
    choices
        .getChildren()
        .addAll(
            button("safe.later", name, () -> found.later(line)),
            button("safe.discard", name, () -> found.discard(line)));
    box.getChildren().add(choices);
    return box;
  }

  private Node decided(Line line) {
    boolean gone = line.decision() == Decision.DISCARDED;
    String name = FoundWords.name(line.work());
    FlowPane box = new FlowPane();
    box.getStyleClass().addAll("recovery-line", "recovery-choices");
    box.setAlignment(Pos.CENTER_LEFT);
    box.getChildren()
        .addAll(
            new Label(Words.of(gone ? "safe.is-discarded" : "safe.is-kept", name)),
            button(gone ? "safe.take-back" : "safe.show-again", name, () -> found.again(line)));
    return box;
  }

  private static Button button(String key, String name, Runnable action) {
    Button b = new Button(Words.of(key));
    b.setAccessibleText(Words.of("safe.choice-of", Words.of(key), name));
    b.setMinWidth(USE_PREF_SIZE);
    b.setOnAction(e -> action.run());
    return b;
  }

  private static Label words(String text, String style) {
    Label l = new Label(text);
    l.getStyleClass().add(style);
    l.setWrapText(true);
    l.setMinHeight(Region.USE_PREF_SIZE);
    return l;
  }
}
