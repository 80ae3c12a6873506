package saddlewright.prescription.growth;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.design.ArchDesign;
import saddlewright.design.Clasp;
import saddlewright.design.ComponentId;
import saddlewright.design.MajorConnector;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.prescription.Schedule;

/**
 * The stages follow the order in which design is taught: saddles, support, retention, bracing and
 * reciprocation, connectors, indirect retention (Davenport et al., A Clinical Guide to Removable
 * Partial Denture Design, 2000).
 */
class GrowthTest {
  private static Case demo(String name) throws Exception {
    return CaseStore.load(Path.of("demo-cases", name));
  }

  @Test
  void each_stage_adds_to_the_one_before_and_the_last_is_the_whole_design() throws Exception {
    for (String name : List.of("01-lower-class-1-rpi.json", "03-both-arches.json")) {
      Case whole = demo(name);
      for (Arch arch : Arch.values()) {
        Set<ComponentId> before = new HashSet<>();
        for (GrowthStage stage : GrowthStage.values()) {
          Set<ComponentId> now = new HashSet<>();
          stage.of(whole.design(arch)).components().forEach(c -> now.add(c.id()));
          assertThat(now).containsAll(before);
          before = now;
        }
        assertThat(GrowthStage.COMPLETE.of(whole.design(arch))).isEqualTo(whole.design(arch));
        assertThat(GrowthStage.CHART.of(whole.design(arch)).components()).isEmpty();
      }
    }
  }

  @Test
  void what_is_taught_first_stands_first() throws Exception {
    ArchDesign whole = demo("01-lower-class-1-rpi.json").lowerDesign();
    ArchDesign saddles = GrowthStage.SADDLES.of(whole);
    assertThat(saddles.all(Saddle.class)).isNotEmpty();
    assertThat(saddles.all(Rest.class)).isEmpty();
    ArchDesign support = GrowthStage.SUPPORT.of(whole);
    assertThat(support.all(Rest.class)).isNotEmpty().noneMatch(Rest::indirectRetainer);
    assertThat(support.all(Clasp.class)).isEmpty();
    ArchDesign bracing = GrowthStage.BRACING.of(whole);
    assertThat(bracing.all(Clasp.class)).hasSameSizeAs(whole.all(Clasp.class));
    assertThat(bracing.all(MajorConnector.class)).isEmpty();
    ArchDesign connected = GrowthStage.CONNECTORS.of(whole);
    assertThat(connected.all(MajorConnector.class)).isNotEmpty();
    assertThat(connected.all(Rest.class)).noneMatch(Rest::indirectRetainer);
    assertThat(GrowthStage.INDIRECT_RETENTION.of(whole).all(Rest.class))
        .hasSameSizeAs(whole.all(Rest.class));
  }

  @Test
  void the_captions_name_each_component_of_the_schedule_once() throws Exception {
    Assessment a = Assessment.of(demo("03-both-arches.json"));
    Schedule schedule = Schedule.of(a, Notation.UNIVERSAL);
    StringBuilder all = new StringBuilder();
    for (GrowthStage stage : GrowthStage.values()) {
      if (stage != GrowthStage.COMPLETE) {
        all.append(GrowthCaption.of(stage, a, Notation.UNIVERSAL, List.of(Arch.values())).toText());
      }
    }
    for (Schedule.Line l : schedule.lines()) {
      if (l.category() != saddlewright.prescription.Category.OTHER) {
        assertThat(all.toString().split("\n  " + l.number() + "\\. ", -1)).hasSize(2);
        assertThat(all).contains(l.text());
      }
    }
  }

  @Test
  void a_caption_says_why_and_why_there_is_none() throws Exception {
    Assessment a = Assessment.of(demo("01-lower-class-1-rpi.json"));
    GrowthCaption retention =
        GrowthCaption.of(GrowthStage.RETENTION, a, Notation.FDI, List.of(Arch.values()));
    assertThat(retention.in(Arch.UPPER).orElseThrow().summary())
        .isEqualTo("Nothing is added: no denture for this arch.");
    assertThat(retention.in(Arch.LOWER).orElseThrow().decisions())
        .isNotEmpty()
        .allSatisfy(d -> assertThat(d.why()).isNotEmpty());
    assertThat(
            GrowthCaption.of(GrowthStage.CHART, a, Notation.FDI, List.of(Arch.LOWER))
                .arches()
                .get(0)
                .summary())
        .isEqualTo("Kennedy Class I.");
  }
}
