package saddlewright.desktop.prescription;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import saddlewright.casefile.order.Disinfection;
import saddlewright.desktop.Words;

/** How one thing was disinfected: what, with what, how long, by whom, when. */
final class DisinfectionRow implements Rows.Row<Disinfection> {
  private final RowText what;
  private final RowText agent;
  private final RowText minutes;
  private final RowText by;
  private final DayField on;
  private final FlowPane row = new FlowPane();
  private final String id;
  private final String number;
  private final Consumer<UnaryOperator<Disinfection>> change;
  private final Runnable left;

  DisinfectionRow(
      int index, Consumer<UnaryOperator<Disinfection>> change, Runnable left, Runnable remove) {
    this.id = "disinfection-" + index;
    this.number = Integer.toString(index + 1);
    this.change = change;
    this.left = left;
    what = text("what", 21, w -> d -> new Disinfection(w, d.agent(), d.minutes(), d.by(), d.on()));
    agent = text("agent", 21, w -> d -> new Disinfection(d.what(), w, d.minutes(), d.by(), d.on()));
    minutes =
        text(
                "minutes",
                4,
                w ->
                    d ->
                        new Disinfection(
                            d.what(),
                            d.agent(),
                            w.isEmpty() ? Optional.empty() : Optional.of(Integer.valueOf(w)),
                            d.by(),
                            d.on()))
            .digits(4);
    by = text("by", 15, w -> d -> new Disinfection(d.what(), d.agent(), d.minutes(), w, d.on()));
    on =
        new DayField(
            id + "-on",
            heard("on"),
            day ->
                change.accept(
                    d -> new Disinfection(d.what(), d.agent(), d.minutes(), d.by(), day)));
    Button away = new Button(Words.of("row.remove"));
    away.setId(id + "-remove");
    away.setAccessibleText(Words.of("disinfection.heard", number, Words.of("row.remove")));
    away.setOnAction(e -> remove.run());
    row.getStyleClass().add("list-row");
    row.getChildren()
        .addAll(
            captioned("what", what),
            captioned("agent", agent),
            captioned("minutes", minutes),
            captioned("by", by),
            new Captioned(Words.of("disinfection.on"), on, on.focus()),
            away);
  }

  private Captioned captioned(String part, RowText input) {
    return new Captioned(Words.of("disinfection." + part), input, input);
  }

  private RowText text(
      String part,
      int columns,
      java.util.function.Function<String, UnaryOperator<Disinfection>> with) {
    return new RowText(
        id + "-" + part,
        heard(part),
        columns,
        s -> !part.equals("what") || !s.isEmpty(),
        s -> change.accept(with.apply(s)),
        left);
  }

  private String heard(String part) {
    return Words.of("disinfection.heard", number, Words.of("disinfection." + part));
  }

  @Override
  public Node node() {
    return row;
  }

  @Override
  public Node focus() {
    return agent;
  }

  @Override
  public void show(Disinfection d) {
    what.show(d.what());
    agent.show(d.agent());
    minutes.show(d.minutes().map(Object::toString).orElse(""));
    by.show(d.by());
    Optional<LocalDate> day = d.on();
    on.show(day);
  }
}
