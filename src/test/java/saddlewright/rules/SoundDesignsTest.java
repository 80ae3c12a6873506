package saddlewright.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.ArchDesign;
import saddlewright.design.ClaspForm;
import saddlewright.design.ConnectorForm;
import saddlewright.design.MinorConnector;

/** Designs that teachers hold up as sound raise no grave finding. */
class SoundDesignsTest {

  /** By source; teeth and components as the source names them, the rest as is usual. */
  private static Map<String, Designs> sound() {
    Map<String, Designs> m = new LinkedHashMap<>();
    m.put("lower Class I with RPI units (common practice)", Designs.lowerClassOne());
    m.put(
        "lower Class II with a three-arm clasp opposite (common practice)",
        Designs.lowerClassTwo());
    m.put("upper Class III modification 1 (common practice)", Designs.upperClassThree());
    m.put("upper Class IV, clasps well back (common practice)", Designs.upperClassFour());
    m.put(
        "upper Class III modification 1, lecture notes, University of Western Australia",
        Designs.upper()
            .missing(14, 15, 24, 25, 26)
            .saddle(14, 15)
            .saddle(24, 26)
            .threeArm(16, RestSite.MESIAL_OCCLUSAL, End.MESIAL, Zone.DISTOBUCCAL)
            .threeArm(27, RestSite.MESIAL_OCCLUSAL, End.MESIAL, Zone.DISTOBUCCAL)
            .rest(13, RestSite.CINGULUM)
            .plating(13, 13)
            .guidePlate(13, End.DISTAL)
            .clasp(13, ClaspForm.COMBINATION, Zone.MESIOBUCCAL, End.DISTAL)
            .undercut(13, Zone.MESIOBUCCAL, 0.75)
            .rest(23, RestSite.CINGULUM)
            .plating(23, 23)
            .guidePlate(23, End.DISTAL)
            .connector(ConnectorForm.PALATAL_STRAP, 15, 26));
    m.put(
        "lower Class I, last teeth 34 and 45, design tutorial by Faraone",
        Designs.lower()
            .missing(35, 36, 37, 46, 47)
            .lingualDepth(10, 31, 34, 41, 44, 45)
            .saddle(35, 37)
            .saddle(46, 47)
            .rpi(34)
            .rpi(45)
            .indirect(44, RestSite.MESIAL_OCCLUSAL)
            .strut(44, MinorConnector.Place.MESIAL_EMBRASURE)
            .connector(ConnectorForm.LINGUAL_BAR, 45, 34));
    m.put(
        "lower Class I, corrected lingual plate, Oklahoma review question 71",
        Designs.lower()
            .missing(35, 36, 37, 45, 46, 47)
            .lingualDepth(5, 31, 41)
            .saddle(35, 37)
            .saddle(45, 47)
            .rpi(34)
            .rpi(44)
            .indirect(33, RestSite.CINGULUM)
            .indirect(43, RestSite.CINGULUM)
            .connector(ConnectorForm.LINGUAL_PLATE, 44, 34));
    return m;
  }

  @TestFactory
  Stream<DynamicTest> raise_no_grave_finding() {
    return sound().entrySet().stream()
        .map(
            e ->
                dynamicTest(
                    e.getKey(),
                    () ->
                        assertThat(
                                Report.of(List.of(e.getValue().situation()), List.of()).standing())
                            .filteredOn(f -> f.severity() == Severity.MUST)
                            .extracting(Finding::sentence)
                            .isEmpty()));
  }

  @Test
  void a_full_arch_without_a_design_raises_nothing() {
    for (Arch arch : Arch.values()) {
      Situation s =
          Situation.of(
              ArchChart.full(arch),
              ArchChart.full(arch.opposite()),
              ArchDesign.empty(arch),
              Profile.UK_TEACHING);
      assertThat(Report.of(List.of(s), List.of()).entries()).isEmpty();
    }
  }

  /** One-sided designs with every mistake must not make any rule stumble. */
  @Test
  void an_edentulous_arch_is_judged_without_stumbling() {
    Designs d = Designs.lower();
    Tooth.in(Arch.LOWER).forEach(t -> d.missing(t.fdi()));
    d.saddle(47, 37)
        .rest(45, RestSite.CINGULUM)
        .clasp(33, ClaspForm.RING, Zone.MID_BUCCAL, End.MESIAL);
    assertThat(Report.of(List.of(d.situation()), List.of()).entries()).isNotEmpty();
  }
}
