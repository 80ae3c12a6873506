package saddlewright.desktop.survey.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.desktop.Words;
import saddlewright.desktop.survey.Entry;
import saddlewright.desktop.survey.Item;
import saddlewright.desktop.survey.Items;

/**
 * The items of an arch by tooth, and the texts that were entered but could not be used: these stay
 * where they were entered, with the reason, until they are put right or given up.
 */
final class QuickEntry {
  /** A text that could not be used, and why. */
  record Refusal(String text, String sentence) {}

  private final Arch arch;
  private final List<Items.Group> groups;
  private final List<Item> items;
  private final SortedMap<Place, Refusal> refused = new TreeMap<>();
  private final SortedMap<Place, String> remarks = new TreeMap<>();

  QuickEntry(Arch arch) {
    this.arch = arch;
    this.groups = Items.of(arch);
    this.items = groups.stream().flatMap(g -> g.items().stream()).toList();
  }

  Arch arch() {
    return arch;
  }

  List<Items.Group> groups() {
    return groups;
  }

  int rows() {
    return items.size();
  }

  int columns() {
    return Tooth.in(arch).size();
  }

  Item item(Place p) {
    return items.get(p.row());
  }

  Tooth tooth(Place p) {
    return Tooth.at(arch, p.column());
  }

  boolean isAsked(ArchChart chart, Place p) {
    return item(p).isAskedOf(chart, tooth(p));
  }

  /** What stands in a cell: what was refused there, or else what is charted. */
  String text(ArchChart chart, Place p) {
    Refusal r = refused.get(p);
    if (r != null) {
      return r.text();
    }
    return isAsked(chart, p) ? item(p).text(chart, tooth(p)) : "";
  }

  Optional<Refusal> refusal(Place p) {
    return Optional.ofNullable(refused.get(p));
  }

  SortedMap<Place, Refusal> refusals() {
    return refused;
  }

  /** How the last text entered there was understood, where that was not plain. */
  Optional<String> remark(Place p) {
    return Optional.ofNullable(remarks.get(p));
  }

  Optional<String> caution(ArchChart chart, Place p) {
    return isAsked(chart, p) ? item(p).caution(chart, tooth(p)) : Optional.empty();
  }

  /** Gives up what was refused at a place. */
  boolean giveUp(Place p) {
    return refused.remove(p) != null;
  }

  void forget() {
    refused.clear();
    remarks.clear();
  }

  /** The chart with texts entered at places, from the top down; what is refused is noted. */
  ArchChart enter(ArchChart chart, SortedMap<Place, String> texts) {
    ArchChart now = chart;
    for (Map.Entry<Place, String> e : texts.entrySet()) {
      now = enter(now, e.getKey(), e.getValue());
    }
    return now;
  }

  private ArchChart enter(ArchChart chart, Place p, String text) {
    refused.remove(p);
    remarks.remove(p);
    Item item = item(p);
    Tooth tooth = tooth(p);
    if (!item.isAskedOf(chart, tooth)) {
      if (!text.isBlank()) {
        refused.put(p, new Refusal(text.strip(), item.notAsked(chart, tooth)));
      }
      return chart;
    }
    if (text.strip().equals(item.text(chart, tooth))) {
      return chart;
    }
    Entry entry = item.enter(chart, tooth, text);
    if (entry instanceof Entry.Taken taken) {
      taken.remark().ifPresent(r -> remarks.put(p, r));
      return taken.chart();
    }
    refused.put(p, new Refusal(text.strip(), ((Entry.Refused) entry).sentence()));
    return chart;
  }

  /** The texts of a block, row by row. */
  List<List<String>> texts(ArchChart chart, Block block) {
    List<List<String>> out = new ArrayList<>();
    for (int r = block.top(); r <= block.bottom(); r++) {
      List<String> row = new ArrayList<>();
      for (int c = block.left(); c <= block.right(); c++) {
        row.add(text(chart, new Place(r, c)));
      }
      out.add(row);
    }
    return out;
  }

  /**
   * Rows of texts laid over the table: from the first place of a block on, or all over it when they
   * are one cell. What would stand beyond the table is left out.
   */
  SortedMap<Place, String> laid(List<List<String>> rows, Block over) {
    SortedMap<Place, String> out = new TreeMap<>();
    if (rows.size() == 1 && rows.get(0).size() == 1) {
      over.places().forEach(p -> out.put(p, rows.get(0).get(0)));
      return out;
    }
    for (int r = 0; r < rows.size() && over.top() + r < rows(); r++) {
      List<String> row = rows.get(r);
      for (int c = 0; c < row.size() && over.left() + c < columns(); c++) {
        out.put(new Place(over.top() + r, over.left() + c), row.get(c));
      }
    }
    return out;
  }

  /** Whether all of the rows find a place from there on. */
  boolean fits(List<List<String>> rows, Block over) {
    int widest = rows.stream().mapToInt(List::size).max().orElse(0);
    return over.top() + rows.size() <= rows() && over.left() + widest <= columns();
  }

  /** What fills a block from its first row, or along from its first tooth. */
  SortedMap<Place, String> filled(ArchChart chart, Block block, boolean down) {
    SortedMap<Place, String> out = new TreeMap<>();
    for (Place p : block.places()) {
      Place from = down ? new Place(block.top(), p.column()) : new Place(p.row(), block.left());
      if (!from.equals(p)) {
        out.put(p, text(chart, from));
      }
    }
    return out;
  }

  /** What undo calls the entry of texts. */
  String name(ArchChart next, SortedMap<Place, String> texts) {
    if (texts.size() != 1) {
      return Words.of("edit.survey-several", texts.size(), arch.code());
    }
    Place p = texts.firstKey();
    String text = item(p).text(next, tooth(p));
    return Words.of(
        "edit.survey",
        tooth(p),
        item(p).name(tooth(p)),
        text.isEmpty()
            ? Words.of("survey.uncharted")
            : item(p).unit().isEmpty() ? text : text + " " + item(p).unit());
  }
}
