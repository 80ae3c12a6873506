package saddlewright.prescription.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.chart.ChartField;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.Component;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.drawing.Callout;
import saddlewright.prescription.FindingSign;
import saddlewright.prescription.Reasons;
import saddlewright.rules.Credit;
import saddlewright.rules.OpenQuestion;
import saddlewright.rules.Report;
import saddlewright.rules.Tally;
import saddlewright.rules.Waiver;

/** Findings, questions, waivers and reasons as they stand on paper. */
class FindingsOnPaperTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path CASE = Path.of("demo-cases/10-fault-lower-class-2.json");
  private static final String RULE = "lingual-bars-have-depth";

  private final Assessment judged;
  private final Subject rest;

  FindingsOnPaperTest() throws Exception {
    Case c = CaseStore.load(CASE);
    Component r = c.lowerDesign().stream(Rest.class).findFirst().orElseThrow();
    rest = Subject.of(Arch.LOWER, r);
    Report plain = Assessment.of(c).report();
    Report.Entry first = plain.entries().get(0);
    Report.Entry second = plain.entries().get(1);
    Waiver accepted =
        new Waiver(
            first.finding().key(),
            "Agreed at the chairside",
            "tutor",
            DAY,
            first.finding().facts());
    Waiver old =
        new Waiver(second.finding().key(), "Agreed long ago", "student", DAY, "2 parts / 3 parts");
    Assessment waived = Assessment.of(c.withWaivers(List.of(accepted, old)));
    Report r2 = waived.report();
    judged =
        waived.with(
            new Report(
                r2.entries(),
                List.of(
                    new OpenQuestion(
                        ChartField.lingualDepth(List.of(Tooth.T43, Tooth.T42, Tooth.T41)),
                        List.of(RULE),
                        List.of(Subject.of(Arch.LOWER)))),
                List.of(
                    new Credit(RULE, rest, "supports the saddle at its near end"),
                    new Credit(RULE, rest, "keeps the clasp at its height"),
                    new Credit(RULE, Subject.of(Tooth.T34), "is firm enough to serve")),
                new Tally(17, 4, 22, 3),
                List.of(new Waiver(RULE + "@lower/arch", "Measured again", "tutor", DAY, "x"))));
  }

  private String words(List<Callout> signs) throws Exception {
    return PrintedPage.packed(
        PrescriptionPdf.toBytes(judged, PrintOptions.on(DAY).withSigns(signs)));
  }

  @Test
  void what_could_not_be_judged_is_listed_with_what_waits_for_it_and_counted() throws Exception {
    assertThat(words(List.of()))
        .contains("Notjudged:valuesthatarenotcharted")
        .contains("Lingualsulcusdepthat43–41")
        .contains(
            "Rulesjudged:17;waitingforavaluethatisnotcharted:4;notapplicable:22;"
                + "nottaughtbythisschool:3.");
  }

  @Test
  void a_waiver_is_printed_with_reason_role_and_date_and_a_stale_one_with_both_facts()
      throws Exception {
    String facts =
        PrintedPage.packed(
            judged.report().entries().stream()
                .filter(e -> e.state() == Report.State.STALE)
                .findFirst()
                .orElseThrow()
                .finding()
                .facts());
    assertThat(words(List.of()))
        .contains("Acceptedbythetutoron25November2026:Agreedatthechairside")
        .contains("Waivedbythestudenton25November2026:Agreedlongago")
        .contains("Thefactswerethen2parts/3partsandarenow" + facts)
        .contains("Waiversthatanswernofindinganymore")
        .contains("Acceptedbythetutoron25November2026:Measuredagain");
  }

  @Test
  void the_reasons_stand_on_a_page_of_their_own_under_their_component() throws Exception {
    assertThat(words(List.of()))
        .contains("Reasonsforeachcomponent")
        .contains("Supportsthesaddleatitsnearend;keepstheclaspatitsheight.")
        .contains("Tooth34Isfirmenoughtoserve");
    Reasons.Line line =
        Reasons.of(judged).lines().stream()
            .filter(l -> !l.reasons().isEmpty())
            .findFirst()
            .orElseThrow();
    assertThat(line.name()).isEqualTo("Distal rest on 34");
    assertThat(Reasons.of(judged).toText())
        .contains("Distal rest on 34\n      - supports the saddle at its near end [" + RULE + "]")
        .contains("      Tooth 34\n      - is firm enough to serve [" + RULE + "]");
  }

  @Test
  void without_reasons_there_is_no_page_for_them() throws Exception {
    Report r = judged.report();
    Assessment bare =
        judged.with(new Report(r.entries(), r.questions(), List.of(), r.tally(), List.of()));
    assertThat(PrintedPage.packed(PrescriptionPdf.toBytes(bare, DAY)))
        .doesNotContain("Reasonsforeachcomponent");
  }

  @Test
  void signs_on_the_drawing_bear_the_numbers_of_the_lists() throws Exception {
    List<FindingSign> signs = FindingSign.onPaper(judged.report());
    int standing = judged.report().standing().size();
    FindingSign question =
        signs.stream()
            .filter(s -> s.callout().form() == Callout.Form.SQUARE)
            .findFirst()
            .orElseThrow();
    assertThat(question.callout().number()).isEqualTo(Integer.toString(standing + 1));
    assertThat(question.callout().subject()).isEqualTo(Subject.of(Tooth.T42));
    FindingSign accepted =
        signs.stream().filter(s -> s.callout().answered()).findFirst().orElseThrow();
    assertThat(accepted.callout().letter()).isEqualTo("W");
    assertThat(accepted.callout().number()).isEqualTo(Integer.toString(standing + 2));
    assertThat(signs.stream().flatMap(s -> s.findings().stream()))
        .as("every finding has a sign")
        .containsExactlyInAnyOrderElementsOf(
            judged.report().entries().stream().map(e -> e.finding().key()).toList());
    String marked = words(FindingSign.callouts(judged.report()));
    assertThat(marked).contains("mustbeputright").contains("notjudged");
    assertThat(words(List.of())).doesNotContain("mustbeputright");
  }

  @Test
  void several_of_a_kind_beside_one_subject_share_a_sign() {
    List<FindingSign> paper = FindingSign.onPaper(judged.report());
    List<FindingSign> screen = FindingSign.onScreen(judged.report());
    assertThat(screen).hasSameSizeAs(paper);
    Optional<FindingSign> shared = screen.stream().filter(s -> s.findings().size() > 1).findFirst();
    shared.ifPresent(s -> assertThat(s.callout().number()).isEqualTo("×" + s.findings().size()));
    assertThat(
            screen.stream()
                .filter(s -> s.findings().size() + s.fields().size() == 1)
                .map(s -> s.callout().number()))
        .allMatch(String::isEmpty);
  }
}
