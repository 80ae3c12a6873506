package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.json.PatientStore;
import saddlewright.casefile.order.Answer;
import saddlewright.casefile.order.DocumentKind;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.casefile.order.Regime;
import saddlewright.desktop.preferences.MyDetails;
import saddlewright.desktop.preview.DeskDocument;
import saddlewright.prescription.Level;

/** The form of the prescription: typed in, gone through by its gaps, undone, saved. */
class PrescriptionFormTest {
  private static final Path DEMO = Path.of("demo-cases/01-lower-class-1-rpi.json");

  @TempDir Path folder;
  private OnStage w;

  @BeforeEach
  void open() throws Exception {
    w = OnStage.open(folder.resolve("settings"));
    w.press("welcome-new");
    w.press("step-PRESCRIPTION");
  }

  @AfterEach
  void close() throws Exception {
    w.close();
  }

  private PrescriptionDetails now() {
    return w.table().current().prescription();
  }

  private <T> T run(Callable<T> action) throws Exception {
    return OnStage.run(action);
  }

  private void type(String id, String text) throws Exception {
    run(
        () -> {
          TextInputControl field = w.find(id, TextInputControl.class);
          field.requestFocus();
          field.clear();
          for (char c : text.toCharArray()) {
            field.appendText(Character.toString(c));
          }
          return null;
        });
  }

  private void leave() throws Exception {
    run(
        () -> {
          w.find("next-gap", Node.class).requestFocus();
          return null;
        });
  }

  private String focus() throws Exception {
    return run(() -> w.window.sheet().getScene().getFocusOwner().getId());
  }

  private String words(String id) throws Exception {
    return run(() -> w.find(id, Labeled.class).getText());
  }

  @Test
  void every_field_that_is_asked_for_has_its_control() throws Exception {
    for (Regime r : Regime.values()) {
      run(
          () -> {
            w.table().apply("x", w.table().current().with(now().withRegime(r)));
            return null;
          });
      for (var line : run(() -> w.table().completeness().lines())) {
        Node block = w.find("block-" + line.field().key(), Node.class);
        assertThat(block).as(line.field().key()).isNotNull();
        assertThat(block.isVisible()).as(line.field().key()).isTrue();
      }
    }
  }

  @Test
  void a_gap_leads_to_its_very_field() throws Exception {
    for (String key :
        new String[] {"prescriber-name", "tooth-shade", "date-required", "stage-plan", "queries"}) {
      run(
          () -> {
            w.find("gap-" + key, Hyperlink.class).fire();
            return null;
          });
      assertThat(focus()).isEqualTo("rx-" + key);
      assertThat(run(() -> isInView(w.find("rx-" + key, Node.class)))).as(key).isTrue();
    }
  }

  private boolean isInView(Node n) {
    Node view = w.find("prescription-form", Node.class);
    return view.localToScene(view.getBoundsInLocal())
        .contains(n.localToScene(n.getBoundsInLocal()));
  }

  @Test
  void the_next_gap_is_what_must_be_filled_in_in_the_order_of_the_form() throws Exception {
    w.press("next-gap");
    assertThat(focus()).isEqualTo("rx-prescriber-name");
    w.press("next-gap");
    assertThat(focus()).as("the button keeps its place").isEqualTo("rx-prescriber-registration");
    type("rx-practice", "Quay Lane");
    w.press("next-gap");
    assertThat(focus()).isEqualTo("rx-prescriber-contact");
    run(
        () -> {
          w.window.files().load(DEMO);
          w.table().apply("x", w.table().current().with(now().with(Item.PRACTICE, "")));
          w.table().apply("x", w.table().current().with(now().with(Item.PRESCRIBER_NAME, "")));
          return null;
        });
    w.press("step-PRESCRIPTION");
    w.press("next-gap");
    assertThat(focus()).as("another case begins anew").isEqualTo("rx-prescriber-name");
  }

  @Test
  void words_are_counted_while_they_are_typed_and_are_one_edit() throws Exception {
    String before = words("meter-must");
    type("rx-prescriber-name", "Dr A. Wainfleet");
    assertThat(now().text(Item.PRESCRIBER_NAME)).isEqualTo("Dr A. Wainfleet");
    assertThat(words("meter-must")).isNotEqualTo(before);
    assertThat(run(() -> w.find("gap-prescriber-name", Node.class))).isNull();
    run(
        () -> {
          w.table().undo();
          return null;
        });
    assertThat(now().answer(Item.PRESCRIBER_NAME)).isEqualTo(Answer.BLANK);
    assertThat(run(() -> w.find("rx-prescriber-name", TextInputControl.class).getText())).isEmpty();
    assertThat(words("meter-must")).isEqualTo(before);
    run(
        () -> {
          w.table().redo();
          return null;
        });
    assertThat(now().text(Item.PRESCRIBER_NAME)).isEqualTo("Dr A. Wainfleet");
  }

  @Test
  void typing_keeps_the_controls_and_the_place_in_the_text() throws Exception {
    TextInputControl field = run(() -> w.find("rx-practice", TextInputControl.class));
    type("rx-practice", "Quay Lane");
    run(
        () -> {
          field.positionCaret(4);
          field.insertText(4, "side");
          return null;
        });
    assertThat(run(() -> w.find("rx-practice", TextInputControl.class))).isSameAs(field);
    assertThat(run(field::getCaretPosition)).isEqualTo(8);
    assertThat(now().text(Item.PRACTICE)).isEqualTo("Quayside Lane");
  }

  @Test
  void none_and_not_applicable_are_typed_as_well_as_chosen() throws Exception {
    type("rx-allergies", "none");
    leave();
    assertThat(now().answer(Item.ALLERGIES)).isEqualTo(Answer.NONE);
    type("rx-tooth-mould", "n/a");
    leave();
    assertThat(now().answer(Item.TOOTH_MOULD)).isEqualTo(Answer.NOT_APPLICABLE);
    assertThat(run(() -> w.find("gap-allergies", Node.class))).isNull();
  }

  @Test
  void what_is_to_follow_is_a_gap_until_it_is_said_by_when() throws Exception {
    type("rx-tooth-shade", "to follow");
    leave();
    assertThat(now().answer(Item.TOOTH_SHADE).state()).isEqualTo(Answer.State.TO_FOLLOW);
    assertThat(run(() -> w.find("gap-tooth-shade", Hyperlink.class).getText())).contains("when");
    run(
        () -> {
          w.find("gap-tooth-shade", Hyperlink.class).fire();
          return null;
        });
    assertThat(focus()).isEqualTo("rx-tooth-shade-by");
    type("rx-tooth-shade-by", "1 December 2026");
    assertThat(now().answer(Item.TOOTH_SHADE))
        .isEqualTo(Answer.toFollow(Optional.of(LocalDate.of(2026, 12, 1))));
    assertThat(run(() -> w.find("gap-tooth-shade", Node.class))).isNull();
  }

  @Test
  void a_day_is_written_as_the_standard_has_it_and_other_words_stay() throws Exception {
    // ISO 8601: year-month-day.
    type("rx-date-issued", "3 Nov 2026");
    leave();
    assertThat(now().text(Item.DATE_ISSUED)).isEqualTo("2026-11-03");
    type("rx-date-required", "to be agreed");
    leave();
    assertThat(now().text(Item.DATE_REQUIRED)).isEqualTo("to be agreed");
    // 03/04 is another day on the other side of the ocean.
    type("rx-stage-plan", "03/04/2026");
    leave();
    assertThat(now().stages().fitting()).isEmpty();
    assertThat(w.texts("block-stage-plan")).anyMatch(t -> t.contains("03/04/2026"));
  }

  @Test
  void an_impression_that_is_enclosed_is_proposed_for_disinfection() throws Exception {
    w.press("enclosure-add");
    type("enclosure-0-detail", "upper impression, silicone");
    w.press("disinfection-propose");
    assertThat(now().disinfections()).hasSize(1);
    assertThat(now().disinfections().get(0).what()).isEqualTo("upper impression, silicone");
    type("disinfection-0-minutes", "10");
    assertThat(now().disinfections().get(0).minutes()).contains(10);
    w.press("enclosure-0-remove");
    assertThat(now().enclosures()).isEmpty();
  }

  @Test
  void a_signature_is_void_once_the_design_has_changed() throws Exception {
    run(
        () -> {
          w.window.files().load(DEMO);
          return null;
        });
    w.press("step-PRESCRIPTION");
    w.press("signature-remove");
    type("rx-signature", "Dr A. Wainfleet");
    w.press("signature-electronic");
    assertThat(words("signature-standing")).contains("Dr A. Wainfleet").doesNotContain("VOID");
    type("rx-tooth-shade", "A3");
    assertThat(words("signature-standing")).as("a shade is no design").doesNotContain("VOID");
    run(
        () -> {
          Case c = w.table().current();
          var design = c.lowerDesign();
          w.table()
              .apply(
                  "x",
                  c.with(
                      new saddlewright.design.DesignEdit.Remove(design.components().get(0).id())
                          .applyTo(design)));
          return null;
        });
    assertThat(words("signature-standing")).contains("VOID");
    assertThat(run(() -> w.table().completeness().isComplete())).isFalse();
    w.press("signature-remove");
    assertThat(now().signature()).isEmpty();
  }

  @Test
  void the_step_is_done_only_when_nothing_that_must_be_filled_in_is_open() throws Exception {
    run(
        () -> {
          w.window.files().load(DEMO);
          return null;
        });
    w.press("step-PRESCRIPTION");
    assertThat(run(() -> w.table().completeness().gaps(Level.MUST))).isEmpty();
    assertThat(stepState()).contains("done");
    type("rx-tooth-shade", "");
    assertThat(stepState()).doesNotContain("done");
  }

  private String stepState() throws Exception {
    w.settle();
    return run(() -> w.find("step-PRESCRIPTION", Node.class).getAccessibleText());
  }

  @Test
  void who_the_patient_is_never_enters_the_case() throws Exception {
    assertThat(run(() -> w.find("section-PATIENT", Node.class).isVisible())).isFalse();
    run(
        () -> {
          @SuppressWarnings("unchecked")
          ComboBox<Regime> regime = (ComboBox<Regime>) w.find("rx-regime", ComboBox.class);
          regime.setValue(Regime.UK);
          return null;
        });
    assertThat(run(() -> w.find("section-PATIENT", Node.class).isVisible())).isTrue();
    assertThat(words("patient-where")).contains("memory");
    type("rx-patient-name", "Ottoline Vexley");
    type("rx-patient-born", "1948-05-09");
    assertThat(w.table().undoNameProperty().get().orElse("")).doesNotContain("Vexley");
    assertThat(run(() -> DeskDocument.of(w.table()).options().patient()))
        .as("named on the slip")
        .isPresent();
    Path file = folder.resolve("upper.json");
    assertThat(run(() -> w.window.files().write(file))).isTrue();
    assertThat(w.table().unsavedProperty().get()).isFalse();
    for (byte[] bytes : new byte[][] {Files.readAllBytes(file), settings()}) {
      assertThat(new String(bytes, StandardCharsets.UTF_8))
          .doesNotContain("Vexley")
          .doesNotContain("Ottoline")
          .doesNotContain("1948-05-09");
    }
    Path beside = folder.resolve("upper.patient.json");
    assertThat(Files.readString(beside)).contains("Ottoline Vexley");
    assertThat(PatientStore.load(beside).reference()).isEqualTo(CaseStore.load(file).reference());
    assertThat(words("patient-where")).contains("upper.patient.json");

    run(
        () -> {
          w.table().close();
          w.window.files().create();
          return null;
        });
    assertThat(w.table().patientProperty().get()).as("another case, another patient").isEmpty();
    run(
        () -> {
          w.window.files().load(file);
          return null;
        });
    assertThat(w.table().patientProperty().get().orElseThrow().name()).isEqualTo("Ottoline Vexley");
    w.press("step-PRESCRIPTION");
    type("rx-patient-name", "");
    type("rx-patient-born", "");
    assertThat(run(() -> w.window.files().write(file))).isTrue();
    assertThat(beside).doesNotExist();
  }

  private byte[] settings() throws Exception {
    Path recent = folder.resolve("settings/recent.txt");
    return Files.readAllBytes(recent);
  }

  @Test
  void the_identity_of_another_patient_is_neither_taken_up_nor_written_over() throws Exception {
    Path file = folder.resolve("a.json");
    CaseStore.save(Case.blank("SW-AAAA-AAAA"), file);
    String other =
        "{\"format\": \"saddlewright-patient\", \"formatVersion\": 1,"
            + " \"reference\": \"SW-BBBB-BBBB\", \"name\": \"Someone Else\"}";
    Path beside = Files.writeString(folder.resolve("a.patient.json"), other);
    run(
        () -> {
          w.window.files().load(file);
          return null;
        });
    assertThat(w.table().patientProperty().get()).isEmpty();
    assertThat(words("notice-text")).contains("a.patient.json").contains("SW-BBBB-BBBB");
    w.press("step-PRESCRIPTION");
    run(
        () -> {
          w.find("patient-record", javafx.scene.control.CheckBox.class).fire();
          return null;
        });
    type("rx-patient-name", "Ottoline Vexley");
    assertThat(run(() -> w.window.files().write(file))).isFalse();
    assertThat(Files.readString(beside)).isEqualTo(other);
    assertThat(w.table().unsavedProperty().get()).isTrue();
  }

  @Test
  void my_details_fill_blank_fields_only_and_outlive_the_window() throws Exception {
    type("rx-prescriber-name", "Dr A. Wainfleet");
    type("rx-practice", "2 Quay Lane\nHarrowmere");
    type("rx-laboratory-name", "Tarn Laboratory");
    w.press("mine-keep");
    assertThat(new MyDetails(folder.resolve("settings")).known())
        .containsEntry(Item.PRACTICE, "2 Quay Lane\nHarrowmere");
    run(
        () -> {
          w.window.files().write(folder.resolve("first.json"));
          w.table().close();
          w.window.files().create();
          return null;
        });
    w.press("step-PRESCRIPTION");
    assertThat(now().text(Item.PRESCRIBER_NAME)).as("never of itself").isEmpty();
    type("rx-laboratory-name", "Another Laboratory");
    w.press("mine-fill");
    assertThat(now().text(Item.PRESCRIBER_NAME)).isEqualTo("Dr A. Wainfleet");
    assertThat(now().text(Item.LABORATORY_NAME)).isEqualTo("Another Laboratory");
    assertThat(words("mine-said")).contains("One field");
  }

  @Test
  void a_coursework_sheet_asks_for_a_candidate_and_not_for_a_laboratory() throws Exception {
    run(
        () -> {
          w.window.files().load(DEMO);
          return null;
        });
    w.press("step-PRESCRIPTION");
    run(
        () -> {
          @SuppressWarnings("unchecked")
          ComboBox<DocumentKind> kind =
              (ComboBox<DocumentKind>) w.find("rx-document-kind", ComboBox.class);
          kind.setValue(DocumentKind.COURSEWORK);
          return null;
        });
    assertThat(run(() -> w.find("block-laboratory-name", Node.class).isVisible())).isFalse();
    assertThat(run(() -> w.find("section-SIGNATURE", Node.class).isVisible())).isFalse();
    assertThat(run(() -> w.find("gap-candidate-number", Node.class))).isNotNull();
    run(
        () -> {
          w.table().know(new PatientIdentity("", "Ottoline Vexley", Optional.empty(), ""));
          return null;
        });
    assertThat(run(() -> DeskDocument.of(w.table()).options().patient()))
        .as("nobody is named on coursework")
        .isEmpty();
    type("rx-candidate-number", "K-2041");
    assertThat(now().coursework().candidate()).isEqualTo("K-2041");
    w.press("coursework-justified");
    var clasp = w.table().current().lowerDesign().components().get(0);
    type("justification-lower-" + clasp.id(), "It stands where it is least seen.");
    assertThat(now().coursework().justifications())
        .containsEntry("lower/" + clasp.id(), "It stands where it is least seen.");
  }

  @Test
  void a_new_case_has_a_reference_that_tells_nothing() {
    assertThat(w.table().current().reference()).matches("SW-[2-9A-Z]{4}-[2-9A-Z]{4}");
  }
}
