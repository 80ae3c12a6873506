package saddlewright.design.transfer;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.ConnectorForm;
import saddlewright.design.MajorConnector;
import saddlewright.design.PostDam;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;

/** A whole demo design, and parts of it, carried to other mouths, sides and the other arch. */
class TransferTest {
  private final Case lowerOne = demo("01-lower-class-1-rpi.json");

  private static Case demo(String name) {
    try {
      return CaseStore.load(Path.of("demo-cases", name));
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  private static ArchChart without(ArchChart chart, int... lost) {
    for (int fdi : lost) {
      chart =
          chart.with(Tooth.of(fdi), ToothFindings.of(ToothStatus.MISSING, GapDecision.REPLACED));
    }
    return chart;
  }

  private static List<Component> on(ArchDesign d, int fdi) {
    return d.components().stream().filter(c -> c.teeth().equals(List.of(Tooth.of(fdi)))).toList();
  }

  @Test
  void onto_a_mouth_like_its_own_all_fits_and_nothing_changes() {
    ArchDesign d = lowerOne.lowerDesign();
    Transfer t = Transfer.of(d.components(), Arch.LOWER, lowerOne.lowerChart());
    assertThat(t.misfits()).isEmpty();
    assertThat(t.left()).isEmpty();
    assertThat(t.replacing(d, true).applyTo(d)).isEqualTo(d);
    assertThat(t.adding(d, true)).as("all of it is there").isEmpty();
  }

  @Test
  void what_the_mouth_does_not_bear_is_named_with_what_is_in_its_way() {
    // 35 is lost as well here, and 47 stands.
    ArchChart other = without(ArchChart.full(Arch.LOWER), 35, 36, 37, 38, 46);
    Transfer t = Transfer.of(lowerOne.lowerDesign().components(), Arch.LOWER, other);
    assertThat(t.misfits())
        .filteredOn(m -> m.component() instanceof Clasp)
        .singleElement()
        .satisfies(m -> assertThat(m.places()).containsExactly(Tooth.T35))
        .satisfies(m -> assertThat(m.toothStands()).isFalse());
    assertThat(t.misfits())
        .filteredOn(m -> m.component() instanceof Saddle)
        .singleElement()
        .satisfies(m -> assertThat(m.places()).containsExactly(Tooth.T47))
        .satisfies(m -> assertThat(m.toothStands()).isTrue());
    assertThat(t.fitting()).anyMatch(c -> c.teeth().equals(List.of(Tooth.T45)));
    ArchDesign fits =
        t.replacing(ArchDesign.empty(Arch.LOWER), false).applyTo(ArchDesign.empty(Arch.LOWER));
    assertThat(fits.components()).isEqualTo(t.fitting());
    ArchDesign all =
        t.replacing(ArchDesign.empty(Arch.LOWER), true).applyTo(ArchDesign.empty(Arch.LOWER));
    assertThat(all.components()).hasSameSizeAs(lowerOne.lowerDesign().components());
  }

  @Test
  void in_the_other_arch_each_stands_on_the_tooth_of_its_place_and_the_bar_is_a_strap() {
    ArchChart upper = without(ArchChart.full(Arch.UPPER), 16, 17, 18, 26, 27, 28);
    Transfer t = Transfer.of(lowerOne.lowerDesign().components(), Arch.LOWER, upper);
    ArchDesign d =
        t.replacing(ArchDesign.empty(Arch.UPPER), true).applyTo(ArchDesign.empty(Arch.UPPER));
    assertThat(d.all(Clasp.class)).extracting(Clasp::tooth).containsExactly(Tooth.T25, Tooth.T15);
    assertThat(d.all(Saddle.class))
        .extracting(s -> s.span().toString())
        .containsExactlyInAnyOrder("26–27", "17–16");
    assertThat(d.all(Rest.class)).hasSameSizeAs(lowerOne.lowerDesign().all(Rest.class));
    assertThat(d.all(MajorConnector.class))
        .extracting(MajorConnector::form)
        .containsExactly(ConnectorForm.PALATAL_STRAP);
    assertThat(t.changed()).hasSize(1);
    assertThat(t.left())
        .as("the spacer under a bar, and words placed in millimetres")
        .allMatch(c -> c.teeth().isEmpty())
        .isNotEmpty();
    assertThat(t.misfits()).isEmpty();
  }

  @Test
  void what_an_upper_arch_alone_has_is_left_out_below() {
    Case upper = demo("09-upper-class-2-torus.json");
    Transfer t =
        Transfer.of(upper.upperDesign().components(), Arch.UPPER, ArchChart.full(Arch.LOWER));
    assertThat(t.left()).anyMatch(PostDam.class::isInstance).noneMatch(Rest.class::isInstance);
    assertThat(t.changed())
        .singleElement()
        .satisfies(c -> assertThat(c.from().form()).isEqualTo(ConnectorForm.PALATAL_RING))
        .satisfies(c -> assertThat(c.to().form()).isEqualTo(ConnectorForm.LINGUAL_BAR));
    assertThat(t.parts(true))
        .allMatch(c -> c.teeth().stream().allMatch(x -> x.arch() == Arch.LOWER));
  }

  /** There and back again, but for what one of the arches has not. */
  @Test
  void every_demo_design_goes_to_the_other_arch_and_back() throws Exception {
    List<Path> demos;
    try (java.util.stream.Stream<Path> files = java.nio.file.Files.list(Path.of("demo-cases"))) {
      demos = files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    }
    assertThat(demos).hasSize(12);
    for (Path f : demos) {
      Case c = CaseStore.load(f);
      for (Arch a : Arch.values()) {
        Arch o = a == Arch.UPPER ? Arch.LOWER : Arch.UPPER;
        Transfer over = Transfer.of(c.design(a).components(), a, ArchChart.full(o));
        Transfer back = Transfer.of(over.parts(true), o, c.chart(a));
        for (Component b : back.parts(true)) {
          if (!(b instanceof MajorConnector)) {
            assertThat(c.design(a).components()).as(f.toString()).contains(b);
          }
        }
        assertThat(over.parts(true).size() + over.left().size())
            .isEqualTo(c.design(a).components().size());
      }
    }
  }

  @Test
  void the_parts_of_one_tooth_go_to_the_tooth_that_is_pointed_at() {
    List<Component> set = on(lowerOne.lowerDesign(), 35);
    assertThat(set).hasSizeGreaterThan(3);
    ArchChart chart = lowerOne.lowerChart();
    assertThat(Transfer.to(set, Arch.LOWER, chart, Optional.of(Tooth.T34)).fitting())
        .hasSameSizeAs(set)
        .allMatch(c -> c.teeth().equals(List.of(Tooth.T34)));
    assertThat(Transfer.to(set, Arch.LOWER, chart, Optional.of(Tooth.T44)).fitting())
        .allMatch(c -> c.teeth().equals(List.of(Tooth.T44)));
    assertThat(
            Transfer.to(set, Arch.LOWER, ArchChart.full(Arch.UPPER), Optional.of(Tooth.T14))
                .fitting())
        .allMatch(c -> c.teeth().equals(List.of(Tooth.T14)));
    assertThat(Transfer.to(set, Arch.LOWER, chart, Optional.empty()).fitting())
        .as("with no place pointed at, the other side")
        .allMatch(c -> c.teeth().equals(List.of(Tooth.T45)));
    assertThat(Transfer.to(set, Arch.LOWER, chart, Optional.of(Tooth.T37)).misfits())
        .as("no tooth stands there")
        .hasSameSizeAs(set);
  }

  @Test
  void parts_of_several_teeth_keep_their_teeth_and_change_the_side_that_is_pointed_at() {
    ArchDesign d = lowerOne.lowerDesign();
    List<Component> left =
        java.util.stream.Stream.concat(on(d, 35).stream(), on(d, 33).stream()).toList();
    assertThat(
            Transfer.to(left, Arch.LOWER, lowerOne.lowerChart(), Optional.of(Tooth.T46)).fitting())
        .flatExtracting(Component::teeth)
        .containsOnly(Tooth.T45, Tooth.T43);
    assertThat(
            Transfer.to(left, Arch.LOWER, ArchChart.full(Arch.UPPER), Optional.of(Tooth.T24))
                .fitting())
        .flatExtracting(Component::teeth)
        .containsOnly(Tooth.T25, Tooth.T23);
  }
}
