package saddlewright.desktop.roll;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;

/** The list says in words all that there is, in its order, and finds it by what is typed. */
class ListInWordsTest {
  private final Assessment now;

  ListInWordsTest() throws Exception {
    now = Assessment.of(CaseStore.load(Path.of("demo-cases", "10-fault-lower-class-2.json")));
  }

  private static List<Row> rows(List<Branch> branches) {
    List<Row> out = new ArrayList<>();
    for (Branch b : branches) {
      out.add(b.row());
      out.addAll(rows(b.below()));
    }
    return out;
  }

  private String sentence(Tooth t, Notation notation) {
    return new RowWords(now, notation).sentence(new Row(Row.Kind.TOOTH, Subject.of(t)));
  }

  @Test
  void every_tooth_and_every_component_has_its_line_once() {
    List<Row> rows = rows(Branch.of(now, Filter.ALL));
    assertThat(rows).doesNotHaveDuplicates();
    Set<Tooth> teeth = EnumSet.noneOf(Tooth.class);
    List<Subject> components = new ArrayList<>();
    for (Row r : rows) {
      if (r.subject() instanceof Subject.OfTooth t) {
        teeth.add(t.tooth());
      }
      if (r.kind() == Row.Kind.COMPONENT) {
        components.add(r.subject());
      }
    }
    assertThat(teeth).isEqualTo(EnumSet.allOf(Tooth.class));
    List<Subject> all = new ArrayList<>();
    for (Arch a : Arch.values()) {
      now.subject().design(a).components().forEach(c -> all.add(Subject.of(a, c)));
    }
    assertThat(components).containsExactlyInAnyOrderElementsOf(all);
  }

  @Test
  void teeth_stand_in_the_order_of_the_arch() {
    for (Branch arch : Branch.of(now, Filter.ALL)) {
      List<Tooth> order =
          rows(List.of(arch)).stream()
              .filter(r -> r.kind() == Row.Kind.TOOTH)
              .map(r -> ((Subject.OfTooth) r.subject()).tooth())
              .toList();
      assertThat(order).isEqualTo(Tooth.in(arch.row().subject().arch()));
    }
  }

  @Test
  void places_stand_in_their_area_with_what_lies_over_it() {
    Branch lower = Branch.of(now, Filter.ALL).get(1);
    Branch area =
        lower.below().stream()
            .filter(b -> b.row().kind() == Row.Kind.AREA)
            .findFirst()
            .orElseThrow();
    RowWords words = new RowWords(now, Notation.FDI);
    assertThat(words.sentence(area.row())).startsWith("Edentulous area 35 to 37, free-end");
    assertThat(rows(area.below()).stream().map(r -> words.parts(r, true).name()))
        .containsExactly(
            "Saddle 35 to 37",
            "Mesh 35 to 37",
            "Finish line 35 to 37",
            "left second premolar",
            "left first molar",
            "left second molar");
  }

  /** The numbers of one tooth in three notations: ISO 3950, Palmer, and the universal system. */
  @Test
  void a_line_names_tooth_number_state_parts_and_findings() {
    assertThat(sentence(Tooth.T46, Notation.FDI))
        .isEqualTo(
            "Lower right first molar, 46, standing, circumferential clasp, tip distobuccal 0.25 mm,"
                + " lingual reciprocal arm, minor connector, mesial embrasure,"
                + " 6 findings, the gravest: must");
    assertThat(sentence(Tooth.T46, Notation.PALMER)).contains("first molar, LR6, standing");
    assertThat(sentence(Tooth.T46, Notation.UNIVERSAL)).contains("first molar, 30, standing");
    assertThat(sentence(Tooth.T48, Notation.FDI))
        .isEqualTo("Lower right third molar, 48, missing, not replaced");
    assertThat(sentence(Tooth.T36, Notation.FDI))
        .contains("36, missing, saddle 35 to 37, mesh 35 to 37, finish line 35 to 37");
  }

  @ParameterizedTest
  @EnumSource(Filter.class)
  void a_filter_keeps_what_it_names_and_nothing_else(Filter filter) {
    RowWords words = new RowWords(now, Notation.FDI);
    List<Branch> kept = Branch.of(now, filter);
    for (Branch arch : kept) {
      for (Row end : ends(arch.below())) {
        boolean named =
            switch (filter) {
              case ALL -> true;
              case COMPONENTS -> end.kind() == Row.Kind.COMPONENT;
              case FINDINGS -> words.gravest(end).isPresent();
              case STANDING ->
                  end.kind() == Row.Kind.COMPONENT
                      || now.subject()
                          .chart(end.subject().arch())
                          .stands(((Subject.OfTooth) end.subject()).tooth());
            };
        assertThat(named).as(filter + ": " + words.sentence(end)).isTrue();
      }
    }
    assertThat(rows(kept)).hasSizeGreaterThan(filter == Filter.ALL ? 40 : 10);
  }

  private static List<Row> ends(List<Branch> branches) {
    List<Row> out = new ArrayList<>();
    for (Branch b : branches) {
      if (b.below().isEmpty()) {
        out.add(b.row());
      } else {
        out.addAll(ends(b.below()));
      }
    }
    return out;
  }

  @Test
  void numbers_are_found_before_words_and_from_where_one_stands() {
    RowWords words = new RowWords(now, Notation.FDI);
    List<Row> lines = rows(Branch.of(now, Filter.ALL));
    assertThat(found(lines, words, "46")).isEqualTo(Subject.of(Tooth.T46));
    assertThat(found(lines, words, "third mol")).isEqualTo(Subject.of(Tooth.T18));
    assertThat(found(lines, words, "lower left can")).isEqualTo(Subject.of(Tooth.T33));
    Typed again = new Typed();
    "third molar".chars().forEach(c -> again.type(Character.toString(c), 0));
    assertThat(
            again.find(
                lines,
                lines.indexOf(new Row(Row.Kind.TOOTH, Subject.of(Tooth.T17))),
                r -> words.parts(r, true).mark(),
                words::sentence))
        .map(Row::subject)
        .contains(Subject.of(Tooth.T28));
  }

  private static Subject found(List<Row> lines, RowWords words, String typed) {
    Typed t = new Typed();
    long at = 0;
    for (char c : typed.toCharArray()) {
      t.type(Character.toString(c), at += 200);
    }
    return t.find(lines, 0, r -> words.parts(r, true).mark(), words::sentence)
        .orElseThrow()
        .subject();
  }

  @Test
  void after_a_pause_what_is_typed_begins_anew() {
    Typed t = new Typed();
    t.type("4", 0);
    t.type("6", 1000);
    assertThat(t.text()).isEqualTo("46");
    t.type("3", 9000);
    assertThat(t.text()).isEqualTo("3");
  }

  @Test
  void an_empty_case_has_its_teeth_and_soft_tissues() {
    Assessment blank = Assessment.of(Case.blank("case-1"));
    assertThat(rows(Branch.of(blank, Filter.ALL))).hasSize(2 * (1 + 16 + 1));
    assertThat(rows(Branch.of(blank, Filter.COMPONENTS))).hasSize(2);
  }
}
