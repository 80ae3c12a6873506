package saddlewright.classification;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;

/** What must hold in any mouth, whatever the rules say in detail. */
class ClassificationPropertiesTest {

  @Provide
  Arbitrary<ArchChart> mouths() {
    Arbitrary<ToothStatus> status =
        Arbitraries.frequencyOf(
            Tuple.of(3, Arbitraries.just(ToothStatus.STANDING)),
            Tuple.of(2, Arbitraries.of(ToothStatus.class)));
    Arbitrary<ToothFindings> tooth =
        Combinators.combine(status, Arbitraries.of(GapDecision.class), Arbitraries.of(true, false))
            .as((s, gap, abutment) -> ToothFindings.of(s, gap).withAbutment(abutment));
    return Combinators.combine(Arbitraries.of(Arch.class), tooth.list().ofSize(16))
        .as(ClassificationPropertiesTest::chart);
  }

  private static ArchChart chart(Arch arch, List<ToothFindings> row) {
    Map<Tooth, ToothFindings> teeth = new EnumMap<>(Tooth.class);
    for (Tooth tooth : Tooth.in(arch)) {
      teeth.put(tooth, row.get(tooth.place()));
    }
    return new ArchChart(arch, teeth, SoftTissues.UNCHARTED);
  }

  @Property
  void a_mirrored_arch_has_the_mirrored_class(@ForAll("mouths") ArchChart chart) {
    Map<Tooth, ToothFindings> teeth = new EnumMap<>(Tooth.class);
    chart.teeth().forEach((tooth, findings) -> teeth.put(tooth.mirrored(), findings));
    Classification found = Classification.of(chart, Set.of());
    Classification mirrored =
        Classification.of(new ArchChart(chart.arch(), teeth, chart.softTissues()), Set.of());

    assertThat(mirrored.label()).isEqualTo(found.label());
    List<EdentulousArea> back = new ArrayList<>();
    for (EdentulousArea area : mirrored.areas()) {
      List<Tooth> replaced = new ArrayList<>(area.replaced());
      replaced.replaceAll(Tooth::mirrored);
      Collections.reverse(replaced);
      back.add(
          new EdentulousArea(
              area.span().mirrored(), replaced, area.freeEnd(), area.crossesMidline()));
    }
    Collections.reverse(back);
    assertThat(back).isEqualTo(found.areas());
  }

  @Property
  void the_other_arch_is_classed_alike(@ForAll("mouths") ArchChart chart) {
    Arch other = chart.arch() == Arch.UPPER ? Arch.LOWER : Arch.UPPER;
    ArchChart opposite = chart(other, List.copyOf(rowOf(chart)));
    assertThat(Classification.of(opposite, Set.of()).label())
        .isEqualTo(Classification.of(chart, Set.of()).label());
  }

  private static List<ToothFindings> rowOf(ArchChart chart) {
    return Tooth.in(chart.arch()).stream().map(chart::tooth).toList();
  }

  @Property
  void a_planned_extraction_is_classed_as_if_done(@ForAll("mouths") ArchChart chart) {
    ArchChart done = chart;
    for (Tooth tooth : Tooth.in(chart.arch())) {
      if (chart.tooth(tooth).status() == ToothStatus.TO_BE_EXTRACTED) {
        done = done.with(tooth, chart.tooth(tooth).withStatus(ToothStatus.MISSING));
      }
    }
    Classification now = Classification.of(chart, Set.of());
    Classification then = Classification.of(done, Set.of());
    assertThat(now.label()).isEqualTo(then.label());
    assertThat(now.areas()).isEqualTo(then.areas());
  }

  @Property
  void every_replaced_tooth_lies_in_one_area(@ForAll("mouths") ArchChart chart) {
    Classification found = Classification.of(chart, Set.of());
    List<Tooth> replaced =
        found.areas().stream().flatMap(area -> area.replaced().stream()).toList();
    List<Tooth> wanted =
        found.kennedy() == KennedyClass.EDENTULOUS
            ? List.of()
            : Tooth.in(chart.arch()).stream().filter(chart::isReplaced).toList();
    assertThat(replaced).isEqualTo(wanted);
  }

  @Property
  void the_reasoning_is_whole_sentences_that_name_every_area(@ForAll("mouths") ArchChart chart) {
    Classification found = Classification.of(chart, Set.of());
    assertThat(found.reasoning()).isNotEmpty().allMatch(s -> s.matches("[A-Z0-9].*[a-zIV)0-9]\\."));
    for (EdentulousArea area : found.areas()) {
      assertThat(found.reasoning()).anyMatch(s -> s.startsWith(area.span() + " "));
    }
    if (found.kennedy().isClass()) {
      assertThat(found.reasoning())
          .anyMatch(s -> s.matches(".*Class " + found.kennedy().word() + "\\."));
    }
  }
}
