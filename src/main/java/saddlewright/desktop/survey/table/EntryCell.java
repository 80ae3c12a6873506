package saddlewright.desktop.survey.table;

import javafx.css.PseudoClass;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import saddlewright.chart.ArchChart;
import saddlewright.desktop.Words;

/** One cell of the table. */
final class EntryCell extends Label {
  private static final PseudoClass REFUSED = PseudoClass.getPseudoClass("refused");
  private static final PseudoClass CAUTION = PseudoClass.getPseudoClass("caution");
  private static final PseudoClass UNASKED = PseudoClass.getPseudoClass("unasked");
  private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
  private static final PseudoClass CURRENT = PseudoClass.getPseudoClass("current");

  private final Place place;

  EntryCell(Place place) {
    this.place = place;
    getStyleClass().add("entry-cell");
    setAccessibleRole(AccessibleRole.TABLE_CELL);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    setId("entry-" + place.row() + "-" + place.column());
  }

  Place place() {
    return place;
  }

  void show(QuickEntry entry, ArchChart chart) {
    boolean refused = entry.refusal(place).isPresent();
    boolean caution = !refused && entry.caution(chart, place).isPresent();
    boolean asked = entry.isAsked(chart, place);
    String text = entry.text(chart, place);
    // A sign stands before what is odd, so that nothing is told by colour alone.
    String sign = refused ? "× " : caution ? "! " : "";
    String shown = asked || refused ? sign + text : "–";
    if (!shown.equals(getText())) {
      setText(shown);
    }
    pseudoClassStateChanged(REFUSED, refused);
    pseudoClassStateChanged(CAUTION, caution);
    pseudoClassStateChanged(UNASKED, !asked);
    setAccessibleText(
        Words.of(
            "entry.cell",
            entry.tooth(place),
            entry.item(place).name(entry.tooth(place)),
            asked
                ? text.isEmpty() ? Words.of("survey.uncharted") : text
                : Words.of("entry.unasked")));
  }

  void choose(boolean chosen, boolean current) {
    pseudoClassStateChanged(CHOSEN, chosen);
    pseudoClassStateChanged(CURRENT, current);
  }
}
