package saddlewright.prescription;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.order.DocumentKind;
import saddlewright.casefile.order.Item;

/** A prescription goes out, is changed and goes out again. */
class IssueTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 11, 3);
  private static final LocalDate LATER = LocalDate.of(2026, 11, 9);

  private Case ready;

  @BeforeEach
  void load() throws Exception {
    ready = CaseStore.load(Path.of("demo-cases/03-both-arches.json"));
  }

  private static Issue issue(Case c, LocalDate on) {
    return new Issue(Assessment.of(c), Optional.empty(), on);
  }

  private static Case issued(Case c, LocalDate on) {
    return issue(c, on).recorded().subject();
  }

  private static Case changed(Case c) {
    return c.with(c.prescription().with(Item.TOOTH_SHADE, "B2"));
  }

  @Test
  void a_case_that_has_not_gone_out_is_a_draft_of_revision_1() {
    assertThat(Issue.stateOf(ready)).matches("Revision 1 \\(draft\\) · ([0-9a-f]{4} ?){4}");
    assertThat(Issue.fileName(ready)).isEqualTo("HTC-0103-revision-1-draft.pdf");
  }

  @Test
  void issuing_records_number_day_and_hash_and_fills_in_the_date() {
    Case c = issued(ready, FIRST);
    assertThat(c.prescription().issued())
        .singleElement()
        .satisfies(
            r -> {
              assertThat(r.number()).isEqualTo(1);
              assertThat(r.on()).isEqualTo(FIRST);
              assertThat(r.hash()).isEqualTo(Revision.of(c).hash());
            });
    assertThat(c.prescription().text(Item.DATE_ISSUED)).isEqualTo("2026-11-03");
    assertThat(Issue.stateOf(c)).startsWith("Revision 1, issued 3 November 2026 · ");
    assertThat(Issue.fileName(c)).isEqualTo("HTC-0103-revision-1.pdf");
  }

  @Test
  void a_change_makes_a_draft_that_names_what_it_replaces() {
    Case c = changed(issued(ready, FIRST));
    assertThat(Issue.stateOf(c))
        .startsWith("Revision 2 (draft), replaces revision 1 of 3 November 2026 · ");
    Case second = issued(c, LATER);
    assertThat(second.prescription().issued()).hasSize(2);
    assertThat(Issue.stateOf(second))
        .startsWith(
            "Revision 2, issued 9 November 2026, replaces revision 1 of 3 November 2026 · ");
  }

  @Test
  void issuing_once_more_without_a_change_is_the_same_revision_of_the_same_day() {
    Case once = issued(ready, FIRST);
    Issue again = issue(once, LATER);
    assertThat(again.isRepeated()).isTrue();
    assertThat(again.day()).isEqualTo(FIRST);
    assertThat(again.recorded().subject()).isEqualTo(once);
  }

  @Test
  void what_must_be_filled_in_is_named_but_for_the_day_of_issue() {
    Case blank =
        ready.with(ready.prescription().with(Item.TOOTH_SHADE, "").with(Item.DATE_ISSUED, ""));
    assertThat(issue(ready, FIRST).gaps()).isEmpty();
    assertThat(issue(blank, FIRST).gaps())
        .extracting(Completeness.Gap::sentence)
        .containsExactly("Tooth shade: not filled in.");
  }

  @Test
  void a_signature_is_told_or_awaited_and_coursework_bears_none() {
    assertThat(issue(ready, FIRST).signing())
        .contains("Signed by Dr A. Wainfleet on 19 October 2026.");
    Case unsigned = ready.with(ready.prescription().withSignature(Optional.empty()));
    assertThat(issue(unsigned, FIRST).signing())
        .contains("To be signed by hand on the first page before it is sent.");
    Case coursework = ready.with(ready.prescription().withKind(DocumentKind.COURSEWORK));
    assertThat(issue(coursework, FIRST).signing()).isEmpty();
  }

  @Test
  void a_reference_that_is_no_file_name_still_gives_one() {
    Case odd = ready.withIdentity("../a b:c" + "x".repeat(300), "", "");
    assertThat(Issue.fileName(odd)).matches("[\\p{L}\\p{N}_-][^/:\\\\]{0,99}\\.pdf");
  }
}
