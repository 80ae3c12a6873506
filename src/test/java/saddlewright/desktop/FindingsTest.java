package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import javafx.event.Event;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.rules.Finding;
import saddlewright.rules.Report;
import saddlewright.rules.Severity;
import saddlewright.rules.Waiver;

/** Findings in the window: read, filtered, stepped through, remedied, waived, by keyboard too. */
class FindingsTest {
  private static final Path FAULTY = Path.of("demo-cases/10-fault-lower-class-2.json");
  private static final Path ONE_SIDED = Path.of("demo-cases/11-fault-one-sided.json");

  @TempDir Path folder;
  private OnStage w;

  @BeforeEach
  void open() throws Exception {
    w = OnStage.open(folder.resolve("settings"));
    lay(CaseStore.load(FAULTY));
  }

  @AfterEach
  void close() throws Exception {
    w.close();
  }

  private void lay(Case c) throws Exception {
    act(() -> w.table().lay(c, Optional.empty()));
  }

  private void act(Runnable action) throws Exception {
    OnStage.run(
        () -> {
          action.run();
          return null;
        });
    w.settle();
  }

  private Report report() {
    return w.table().assessment().report();
  }

  private Finding first(Severity severity) {
    return report().standing().stream()
        .filter(f -> f.severity() == severity && !f.remedies().isEmpty())
        .findFirst()
        .orElseThrow();
  }

  private <T> T on(Callable<T> question) throws Exception {
    return OnStage.run(question);
  }

  private List<String> heads() throws Exception {
    return on(
        () ->
            w.find("findings", Node.class).lookupAll(".finding-head").stream()
                .map(n -> ((Labeled) n).getText())
                .toList());
  }

  private void key(KeyCode code) throws Exception {
    act(
        () -> {
          Node at = w.find("findings", Node.class).getScene().getFocusOwner();
          Event.fireEvent(
              at, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false));
          Node then = at.getScene() == null ? at : at.getScene().getFocusOwner();
          if (code.isLetterKey()) {
            String letter = code.getChar().toLowerCase(java.util.Locale.ROOT);
            Event.fireEvent(
                then,
                new KeyEvent(
                    KeyEvent.KEY_TYPED, letter, "", KeyCode.UNDEFINED, false, false, false, false));
          }
        });
  }

  private String focused() throws Exception {
    return on(
        () ->
            w.find("findings", Node.class).getScene().getFocusOwner() instanceof Labeled l
                ? l.getText()
                : "");
  }

  @Test
  void the_count_says_what_was_found_and_how_much_was_judged() throws Exception {
    var t = report().tally();
    String count = on(() -> w.find("findings-count", Labeled.class).getText());
    assertThat(count)
        .startsWith(report().standing().size() + " findings. " + t.judged() + " rules judged, ")
        .contains(t.unanswered() + " wait")
        .contains(t.notApplicable() + " do not apply");

    lay(Case.blank("b"));
    assertThat(on(() -> w.find("findings-count", Labeled.class).getText()))
        .startsWith("No findings. ");
  }

  @Test
  void down_walks_enter_opens_and_selects_and_f_goes_on() throws Exception {
    act(() -> w.find("findings-grouping", Node.class).requestFocus());
    act(
        () ->
            w.find("findings", Node.class).lookupAll(".finding-head").stream()
                .findFirst()
                .orElseThrow()
                .requestFocus());
    List<String> all = heads();
    assertThat(focused()).isEqualTo(all.get(0));
    key(KeyCode.DOWN);
    assertThat(focused()).isEqualTo(all.get(1));
    key(KeyCode.UP);
    key(KeyCode.ENTER);
    Finding one = report().standing().get(0);
    assertThat(w.table().findingProperty().get()).contains(one.key());
    assertThat(w.table().selectionProperty().get()).isEqualTo(one.subjects());

    key(KeyCode.F);
    Finding two = report().standing().get(1);
    assertThat(w.table().findingProperty().get()).contains(two.key());
    assertThat(focused()).isEqualTo(two.sentence());
  }

  @Test
  void r_takes_the_first_remedy_and_undo_names_it() throws Exception {
    Finding f = first(Severity.MUST);
    act(() -> w.table().look(f));
    act(() -> head(f).requestFocus());
    Case before = w.table().current();
    key(KeyCode.R);
    assertThat(w.table().current()).isNotEqualTo(before);
    assertThat(report().standing()).extracting(Finding::key).doesNotContain(f.key());
    assertThat(w.table().undoNameProperty().get()).contains(f.remedies().get(0).label());
    act(w.table()::undo);
    assertThat(w.table().current()).isEqualTo(before);
  }

  private Node head(Finding f) {
    return w.find("findings", Node.class).lookupAll(".finding-head").stream()
        .filter(n -> ((Labeled) n).getText().equals(f.sentence()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_remedy_in_focus_is_shown_on_the_sheet_and_nothing_is_changed() throws Exception {
    Finding f = first(Severity.MUST);
    Case before = w.table().current();
    act(() -> w.table().look(f));
    act(
        () ->
            w.find("findings", Node.class).lookupAll(".remedy").stream()
                .findFirst()
                .orElseThrow()
                .requestFocus());
    assertThat(w.table().previewProperty().get()).contains(f.remedies().get(0));
    Labeled caption = w.find("ghost-caption", Labeled.class);
    assertThat(on(caption::isVisible)).isTrue();
    assertThat(on(() -> caption.getText().strip())).contains(f.remedies().get(0).label());
    assertThat(w.table().current()).isEqualTo(before);

    act(() -> head(f).requestFocus());
    assertThat(w.table().previewProperty().get()).isEmpty();
    assertThat(on(caption::isVisible)).isFalse();
  }

  @Test
  void w_asks_for_a_reason_without_which_nothing_is_waived() throws Exception {
    Finding f = first(Severity.MUST);
    act(() -> w.table().look(f));
    act(() -> head(f).requestFocus());
    key(KeyCode.W);
    TextField reason = w.find("waiver-reason", TextField.class);
    assertThat(on(reason::isFocused)).isTrue();
    assertThat(on(() -> reason.getText().strip()))
        .as("the command is not written into the field")
        .isEmpty();
    act(() -> w.find("waive", Button.class).fire());
    assertThat(w.table().current().waivers()).isEmpty();
    assertThat(on(() -> w.find("waiver-error", Labeled.class).getText())).contains("reason");

    act(() -> reason.setText("Agreed with the patient"));
    act(() -> w.find("waive", Button.class).fire());
    assertThat(w.table().current().waivers())
        .singleElement()
        .satisfies(
            x -> {
              assertThat(x.findingKey()).isEqualTo(f.key());
              assertThat(x.reason()).isEqualTo("Agreed with the patient");
              assertThat(x.role()).isEqualTo("prescriber");
              assertThat(x.date()).isEqualTo(LocalDate.now());
              assertThat(x.facts()).isEqualTo(f.facts());
            });
    assertThat(report().standing()).extracting(Finding::key).doesNotContain(f.key());

    act(() -> w.table().findingProperty().set(Optional.of(f.key())));
    act(() -> button(".withdraw").fire());
    assertThat(w.table().current().waivers()).isEmpty();
    assertThat(report().standing()).extracting(Finding::key).contains(f.key());
  }

  private Button button(String style) {
    return w.find("findings", Node.class).lookupAll(style).stream()
        .map(n -> (Button) n)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_stale_waiver_shows_the_facts_then_and_now() throws Exception {
    Finding f = first(Severity.MUST);
    Waiver old =
        new Waiver(f.key(), "Seen in the clinic", "tutor", LocalDate.of(2026, 1, 5), "3 mm / 9 mm");
    lay(w.table().current().withWaivers(List.of(old)));
    act(() -> w.table().findingProperty().set(Optional.of(f.key())));
    assertThat(w.texts("findings"))
        .anySatisfy(
            t ->
                assertThat(t)
                    .contains("3 mm / 9 mm")
                    .contains(f.facts())
                    .contains("tutor")
                    .contains("Seen in the clinic"));
    assertThat(report().standing()).extracting(Finding::key).contains(f.key());
  }

  @Test
  void a_waiver_that_answers_nothing_is_listed_and_can_be_removed() throws Exception {
    Waiver idle =
        new Waiver(
            "cast-arms-are-long-enough@lower/component/gone",
            "Was accepted",
            "prescriber",
            LocalDate.of(2026, 1, 5),
            "12 mm / 13 mm");
    lay(w.table().current().withWaivers(List.of(idle)));
    assertThat(w.texts("findings")).anySatisfy(t -> assertThat(t).contains("Was accepted"));
    act(() -> button(".remove-waiver").fire());
    assertThat(w.table().current().waivers()).isEmpty();
  }

  @Test
  void a_hard_stop_offers_no_waiver() throws Exception {
    lay(CaseStore.load(ONE_SIDED));
    Finding stop =
        report().standing().stream()
            .filter(f -> f.ruleId().equals("dentures-are-not-one-sided"))
            .findFirst()
            .orElseThrow();
    act(() -> w.table().look(stop));
    assertThat(on(() -> w.find("waiver-reason", Node.class))).isNull();
    assertThat(w.texts("findings"))
        .anySatisfy(t -> assertThat(t).startsWith("This finding cannot be waived."));
  }

  @Test
  void kinds_are_switched_off_and_words_are_looked_for() throws Exception {
    int must = (int) report().count(Severity.MUST);
    int all = heads().size();
    assertThat(must).isPositive();
    act(() -> w.find("chip-MUST", ToggleButton.class).fire());
    assertThat(heads()).hasSize(all - must);
    act(() -> w.find("chip-MUST", ToggleButton.class).fire());
    act(() -> w.find("findings-search", TextField.class).setText("lingual BAR"));
    assertThat(heads()).isNotEmpty().hasSizeLessThan(all);
    act(() -> w.find("findings-search", TextField.class).setText("no such words"));
    assertThat(heads()).isEmpty();
    assertThat(on(() -> w.find("no-findings", Labeled.class).getText())).contains("chosen above");
  }

  @Test
  void findings_are_grouped_by_step_and_by_tooth() throws Exception {
    int all = heads().size();
    @SuppressWarnings("unchecked")
    ComboBox<Enum<?>> grouping = w.find("findings-grouping", ComboBox.class);
    act(() -> grouping.getSelectionModel().select(1));
    assertThat(headings()).anyMatch(h -> h.startsWith("Retention ("));
    assertThat(heads()).hasSize(all);
    act(() -> grouping.getSelectionModel().select(2));
    assertThat(headings()).anyMatch(h -> h.contains("46"));
    assertThat(heads()).hasSize(all);
  }

  private List<String> headings() throws Exception {
    return on(
        () ->
            w.find("findings", Node.class).lookupAll(".finding-heading").stream()
                .map(n -> ((Labeled) n).getText())
                .toList());
  }

  @Test
  void signs_on_the_sheet_open_their_finding_and_can_be_hidden() throws Exception {
    Group signs = w.find("finding-markers", Group.class);
    for (int i = 0; i < 100 && on(() -> signs.getChildren().isEmpty()); i++) {
      Thread.sleep(20);
    }
    long targets = on(() -> targets(signs).count());
    assertThat(targets).isPositive();
    act(
        () ->
            targets(signs)
                .findFirst()
                .orElseThrow()
                .fireEvent(
                    new javafx.scene.input.MouseEvent(
                        javafx.scene.input.MouseEvent.MOUSE_CLICKED,
                        0,
                        0,
                        0,
                        0,
                        javafx.scene.input.MouseButton.PRIMARY,
                        1,
                        false,
                        false,
                        false,
                        false,
                        true,
                        false,
                        false,
                        false,
                        false,
                        true,
                        null)));
    assertThat(w.table().findingProperty().get()).isPresent();
    act(() -> w.table().markersProperty().set(false));
    for (int i = 0; i < 100 && !on(() -> signs.getChildren().isEmpty()); i++) {
      Thread.sleep(20);
    }
    assertThat(on(() -> signs.getChildren().size())).isZero();
  }

  private static Stream<Node> targets(Group signs) {
    return signs.lookupAll(".finding-marker").stream()
        .flatMap(n -> ((Group) n).getChildren().stream())
        .filter(n -> n.getUserData() instanceof saddlewright.prescription.FindingSign);
  }

  @Test
  void what_cant_be_judged_is_a_kind_of_its_own_with_the_rules_that_wait() throws Exception {
    Case faulty = CaseStore.load(Path.of("demo-cases/12-fault-both-arches.json"));
    lay(faulty);
    List<saddlewright.rules.OpenQuestion> questions = report().questions();
    assertThat(questions).isNotEmpty();
    assertThat(
            questions.stream()
                .map(saddlewright.rules.OpenQuestion::field)
                .filter(f -> !f.teeth().isEmpty() && f.zone().isEmpty() && f.site().isEmpty())
                .map(f -> f.arch() + " " + f.kind()))
        .as("nobody is sent twice to the same tooth for the same value")
        .isNotEmpty()
        .doesNotHaveDuplicates();
    assertThat(on(() -> w.find("chip-QUESTION", ToggleButton.class).getText()))
        .isEqualTo(Integer.toString(questions.size()));
    List<String> shown = heads();
    for (var q : questions) {
      assertThat(shown).anyMatch(h -> h.equalsIgnoreCase(q.field().words() + " not charted"));
    }
    act(() -> w.find("chip-QUESTION", ToggleButton.class).fire());
    assertThat(heads()).hasSize(shown.size() - questions.size());
    act(() -> w.find("chip-QUESTION", ToggleButton.class).fire());
    String first = questions.get(0).field().words();
    act(
        () ->
            w.find("findings", Node.class).lookupAll(".finding-head").stream()
                .filter(n -> ((Labeled) n).getText().equalsIgnoreCase(first + " not charted"))
                .map(n -> (Button) n)
                .findFirst()
                .orElseThrow()
                .fire());
    assertThat(w.table().stepProperty().get()).isEqualTo(Step.SURVEY);
    assertThat(w.table().selected().map(saddlewright.design.Subject::arch))
        .contains(questions.get(0).field().arch());
  }

  @Test
  void a_component_says_why_it_is_here_and_each_reason_opens_the_page_of_its_rule()
      throws Exception {
    lay(CaseStore.load(Path.of("demo-cases/01-lower-class-1-rpi.json")));
    saddlewright.rules.Credit credit =
        report().credits().stream()
            .filter(c -> c.subject().component().isPresent())
            .findFirst()
            .orElseThrow();
    act(() -> w.table().select(credit.subject()));
    act(
        () ->
            w.find("subject", Node.class).lookupAll(".hyperlink").stream()
                .map(n -> (javafx.scene.control.Hyperlink) n)
                .filter(h -> h.getText().equalsIgnoreCase(credit.words()))
                .findFirst()
                .orElseThrow()
                .fire());
    assertThat(on(() -> w.find("rule-page", Node.class).isVisible())).isTrue();
    String claim = saddlewright.rules.RuleBook.find(credit.ruleId()).orElseThrow().claim();
    assertThat(w.texts("rule-page")).contains(claim, "Why", "When to waive");
    act(() -> w.find("rule-page-back", Button.class).fire());
    assertThat(on(() -> w.find("rule-page", Node.class).isVisible())).isFalse();
  }

  @Test
  void a_finding_of_an_arch_that_is_hidden_brings_it_up() throws Exception {
    act(() -> w.table().shownProperty().set(Worktable.Shown.UPPER));
    act(() -> w.table().stepProperty().set(Step.PRESCRIPTION));
    act(() -> w.table().look(first(Severity.MUST)));
    assertThat(w.table().shownProperty().get()).isEqualTo(Worktable.Shown.BOTH);
    assertThat(w.table().stepProperty().get()).isEqualTo(Step.REVIEW);
  }
}
