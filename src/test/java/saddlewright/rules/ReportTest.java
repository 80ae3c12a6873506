package saddlewright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Zone;
import saddlewright.design.Rest;

/** Waivers answer findings for the facts they were given for, and never a hard stop. */
class ReportTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

  private static Situation shallow(double mm) {
    return Designs.lowerClassOne().lingualDepth(mm, 31).situation();
  }

  private static Waiver waiverFor(Situation s, String rule) {
    Finding f = RuleBook.find(rule).orElseThrow().judge(s).findings().get(0);
    return new Waiver(f.key(), "measured again at the chairside", "prescriber", DAY, f.facts());
  }

  private static Report.State state(Situation s, Waiver w, String rule) {
    return Report.of(List.of(s), List.of(w)).entries().stream()
        .filter(e -> e.finding().ruleId().equals(rule))
        .findFirst()
        .orElseThrow()
        .state();
  }

  @Test
  void a_waived_finding_stays_listed_but_no_longer_stands() {
    Situation s = shallow(6);
    Report report = Report.of(List.of(s), List.of(waiverFor(s, "lingual-bars-have-depth")));
    assertThat(report.entries())
        .extracting(e -> e.finding().ruleId())
        .contains("lingual-bars-have-depth");
    assertThat(report.standing())
        .extracting(Finding::ruleId)
        .doesNotContain("lingual-bars-have-depth");
  }

  @Test
  void a_waiver_is_stale_when_the_facts_have_changed() {
    Waiver w = waiverFor(shallow(6), "lingual-bars-have-depth");
    assertThat(state(shallow(5), w, "lingual-bars-have-depth")).isEqualTo(Report.State.STALE);
  }

  @Test
  void a_hard_stop_ignores_its_waiver() {
    Situation s =
        Designs.upper()
            .missing(15)
            .saddle(15, 15)
            .rest(16, RestSite.MESIAL_OCCLUSAL)
            .rest(14, RestSite.DISTAL_OCCLUSAL)
            .situation();
    Waiver w = waiverFor(s, "dentures-are-not-one-sided");
    assertThat(state(s, w, "dentures-are-not-one-sided")).isEqualTo(Report.State.OPEN);
  }

  @Test
  void the_gravest_findings_come_first() {
    Report report =
        Report.of(
            List.of(Designs.lowerClassOne().without(Rest.class, 33).mobile(35, 2).situation()),
            List.of());
    assertThat(report.entries())
        .extracting(e -> e.finding().severity())
        .isSortedAccordingTo(Comparator.naturalOrder());
  }

  /** An old file names the rule of tips as it was called when the waiver was given. */
  @Test
  void a_waiver_answers_a_rule_by_its_former_name() {
    Situation s =
        Designs.upperClassThree()
            .undercut(16, Zone.DISTOBUCCAL, 0)
            .undercut(16, Zone.MESIOBUCCAL, 0.25)
            .situation();
    Waiver now = waiverFor(s, "tips-end-in-undercuts");
    Waiver then =
        new Waiver(
            now.findingKey().replace("tips-end-in-undercuts", "tips-end-in-charted-undercuts"),
            now.reason(),
            now.role(),
            now.date(),
            now.facts());
    assertThat(then).isNotEqualTo(now);
    assertThat(state(s, then, "tips-end-in-undercuts")).isEqualTo(Report.State.WAIVED);
  }
}
