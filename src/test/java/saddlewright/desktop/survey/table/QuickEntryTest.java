package saddlewright.desktop.survey.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import saddlewright.chart.ArchChart;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;

class QuickEntryTest {
  private static final ArchChart LOWER = ArchChart.full(Arch.LOWER);
  private final QuickEntry entry = new QuickEntry(Arch.LOWER);

  private Place place(String item, Tooth tooth) {
    for (int r = 0; r < entry.rows(); r++) {
      if (entry.item(new Place(r, 0)).id().equals(item)) {
        return new Place(r, tooth.place());
      }
    }
    throw new AssertionError(item);
  }

  private static SortedMap<Place, String> one(Place p, String text) {
    SortedMap<Place, String> out = new TreeMap<>();
    out.put(p, text);
    return out;
  }

  @Test
  void there_is_a_column_for_every_tooth_and_a_row_for_every_item() {
    assertThat(entry.columns()).isEqualTo(16);
    assertThat(entry.tooth(new Place(0, 0))).isEqualTo(Tooth.T48);
    assertThat(entry.tooth(new Place(0, 15))).isEqualTo(Tooth.T38);
    assertThat(entry.rows()).isGreaterThan(30);
    assertThat(new QuickEntry(Arch.UPPER).rows()).isEqualTo(entry.rows() - 1);
  }

  @Test
  void what_cannot_be_used_stays_in_its_cell_with_a_sentence_and_the_chart_as_it_was() {
    Place p = place("undercut-MESIOBUCCAL", Tooth.T46);
    ArchChart next = entry.enter(LOWER, one(p, "lots"));
    assertThat(next).isEqualTo(LOWER);
    assertThat(entry.text(next, p)).isEqualTo("lots");
    assertThat(entry.refusal(p).orElseThrow().sentence()).contains("“lots” is not a number");
    assertThat(entry.giveUp(p)).isTrue();
    assertThat(entry.text(next, p)).isEmpty();
  }

  @Test
  void a_good_text_takes_the_place_of_a_refused_one() {
    Place p = place("undercut-MESIOBUCCAL", Tooth.T46);
    entry.enter(LOWER, one(p, "lots"));
    ArchChart next = entry.enter(LOWER, one(p, "25"));
    assertThat(entry.refusals()).isEmpty();
    assertThat(entry.text(next, p)).isEqualTo("0.25");
    assertThat(entry.remark(p)).contains("25 is read as 0.25 mm.");
  }

  @Test
  void a_pasted_block_is_laid_from_its_first_place_on_in_the_order_of_the_survey() {
    Place state = place("tooth-status", Tooth.T36);
    List<List<String>> rows = List.of(List.of("missing", "standing"), List.of("replace", ""));
    ArchChart next = entry.enter(LOWER, entry.laid(rows, Block.of(state, state)));
    assertThat(next.tooth(Tooth.T36).status()).isEqualTo(ToothStatus.MISSING);
    assertThat(next.tooth(Tooth.T37).status()).isEqualTo(ToothStatus.STANDING);
    assertThat(entry.refusals()).isEmpty();
  }

  @Test
  void one_copied_cell_fills_all_that_is_chosen() {
    Block over =
        Block.of(place("undercut-MESIOBUCCAL", Tooth.T46), place("undercut-MID_BUCCAL", Tooth.T44));
    ArchChart next = entry.enter(LOWER, entry.laid(List.of(List.of("50")), over));
    assertThat(next.tooth(Tooth.T45).undercuts().keySet())
        .containsExactly(Zone.MESIOBUCCAL, Zone.MID_BUCCAL);
    assertThat(next.tooth(Tooth.T44).undercuts()).hasSize(2);
    assertThat(next.tooth(Tooth.T43).undercuts()).isEmpty();
  }

  @Test
  void a_value_that_the_tooth_cannot_have_is_refused_when_it_is_pasted() {
    ArchChart lost = entry.enter(LOWER, one(place("tooth-status", Tooth.T36), "missing"));
    Place p = place("undercut-MESIOBUCCAL", Tooth.T36);
    assertThat(entry.enter(lost, one(p, ""))).isEqualTo(lost);
    assertThat(entry.refusals()).isEmpty();
    entry.enter(lost, one(p, "25"));
    assertThat(entry.refusal(p).orElseThrow().sentence()).contains("36 does not stand");
  }

  @Test
  void what_reaches_beyond_the_table_is_left_out() {
    Place last = new Place(entry.rows() - 1, 15);
    List<List<String>> rows = List.of(List.of("yes", "yes"), List.of("yes", "yes"));
    Block at = Block.of(last, last);
    assertThat(entry.fits(rows, at)).isFalse();
    assertThat(entry.laid(rows, at)).containsOnlyKeys(last);
  }

  @Test
  void a_block_is_filled_along_from_its_first_tooth_and_down_from_its_first_row() {
    Place a = place("undercut-MESIOBUCCAL", Tooth.T46);
    Place b = place("undercut-MID_BUCCAL", Tooth.T45);
    ArchChart next = entry.enter(LOWER, one(a, "25"));
    ArchChart along = entry.enter(next, entry.filled(next, Block.of(a, b), false));
    assertThat(entry.text(along, new Place(a.row(), b.column()))).isEqualTo("0.25");
    assertThat(entry.text(along, b)).isEmpty();
    ArchChart down = entry.enter(along, entry.filled(along, Block.of(a, b), true));
    assertThat(entry.text(down, b)).isEqualTo("0.25");
  }

  @Test
  void undo_names_one_value_by_its_tooth_and_many_by_their_number() {
    Place p = place("undercut-MESIOBUCCAL", Tooth.T46);
    ArchChart next = entry.enter(LOWER, one(p, "25"));
    assertThat(entry.name(next, one(p, "25"))).isEqualTo("46: mesiobuccal undercut 0.25 mm");
    SortedMap<Place, String> two = one(p, "25");
    two.put(new Place(p.row(), p.column() + 1), "25");
    assertThat(entry.name(next, two)).isEqualTo("Chart 2 values of the lower arch");
  }

  /** Quotes and line ends as spreadsheets write them: RFC 4180, with tabs for commas. */
  @Test
  void blocks_are_read_as_spreadsheets_write_them() {
    assertThat(Tabbed.read("a\tb\r\nc\td\r\n"))
        .containsExactly(List.of("a", "b"), List.of("c", "d"));
    assertThat(Tabbed.read("a\t\n\tb")).containsExactly(List.of("a", ""), List.of("", "b"));
    assertThat(Tabbed.read("\"x\ty\"\t\"say \"\"no\"\"\""))
        .containsExactly(List.of("x\ty", "say \"no\""));
    List<List<String>> rows = List.of(List.of("1", "a\tb"), List.of("", "q\"q"));
    assertThat(Tabbed.read(Tabbed.write(rows))).isEqualTo(rows);
  }
}
