package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.order.Item;
import saddlewright.dentition.Notation;
import saddlewright.desktop.preferences.NewCaseSchool;
import saddlewright.desktop.preferences.Preferences;
import saddlewright.desktop.preferences.PreferencesPane;
import saddlewright.drawing.Ink;
import saddlewright.drawing.Palette;
import saddlewright.rules.Profile;

/** The preferences as they are set in their window. */
class PreferencesWindowTest {
  @TempDir Path folder;
  private OnStage desk;
  private Preferences preferences;
  private PreferencesPane pane;

  @BeforeEach
  void open() throws Exception {
    desk = OnStage.open(folder);
    preferences = desk.table().preferences();
    OnStage.run(
        () -> {
          desk.window.beside().preferences();
          Scene scene = desk.window.preferences().orElseThrow().stage().getScene();
          pane = (PreferencesPane) scene.lookup("#preferences");
          return null;
        });
  }

  @AfterEach
  void close() throws Exception {
    desk.close();
  }

  private <N> N on(String page, String id, Class<N> kind) throws Exception {
    return OnStage.run(
        () -> {
          pane.show(page);
          pane.applyCss();
          pane.layout();
          return kind.cast(pane.lookup("#" + id));
        });
  }

  private void press(String page, String id) throws Exception {
    Button b = on(page, id, Button.class);
    OnStage.run(
        () -> {
          b.fire();
          return null;
        });
  }

  private String text(String page, String id) throws Exception {
    return on(page, id, Labeled.class).getText();
  }

  private void type(String ink, String colour) throws Exception {
    TextField hex = on("inks", "ink-" + ink + "-hex", TextField.class);
    OnStage.run(
        () -> {
          hex.setText(colour);
          hex.fireEvent(new javafx.event.ActionEvent());
          return null;
        });
  }

  @Test
  @SuppressWarnings("unchecked")
  void a_choice_holds_at_once_on_the_desk_and_in_the_file() throws Exception {
    ComboBox<Notation> notation = on("general", "preferences-notation", ComboBox.class);
    CheckBox hidden = on("general", "preferences-recent-private", CheckBox.class);
    OnStage.run(
        () -> {
          notation.setValue(Notation.PALMER);
          hidden.fire();
          return null;
        });

    assertThat(desk.table().notationProperty().get()).isEqualTo(Notation.PALMER);
    assertThat(folder.resolve(Preferences.FILE))
        .content()
        .contains("notation = palmer\n", "recent-files-private = yes\n");
  }

  @Test
  void an_ink_reaches_the_sheet_and_its_print_at_once() throws Exception {
    OnStage.run(
        () -> {
          desk.window.open(Path.of("demo-cases/01-lower-class-1-rpi.json"));
          return null;
        });
    desk.settle();

    type("retentive", "#5A0FA0");

    assertThat(OnStage.run(() -> count(Color.web("#5a0fa0")))).isPositive();
    assertThat(desk.table().printedPalette().hex(Ink.RETENTIVE)).isEqualTo("#5a0fa0");
  }

  private long count(Color colour) {
    return desk.window.sheet().lookupAll("*").stream()
        .filter(
            n -> n instanceof Shape s && !(n instanceof Rectangle) && colour.equals(s.getFill()))
        .count();
  }

  @Test
  void an_ink_that_is_hard_to_see_is_said_to_be_and_mended_by_one_press() throws Exception {
    type("rest", "#f0b080");
    assertThat(text("inks", "ink-rest-contrast")).startsWith("✗ 1.");
    assertThat(text("inks", "ink-rest-trouble")).contains("hard to see");
    assertThat(desk.table().printedPalette().hex(Ink.REST)).isEqualTo(Palette.PAPER.hex(Ink.REST));

    press("inks", "ink-rest-better");
    assertThat(text("inks", "ink-rest-contrast")).startsWith("✓ 3.");

    press("inks", "ink-rest-usual");
    assertThat(preferences.inkProperty(false, Ink.REST).get()).isEmpty();
  }

  @Test
  void what_is_no_colour_is_refused_beside_its_field() throws Exception {
    type("note", "reddish");

    assertThat(text("inks", "ink-note-trouble")).contains("“reddish” is not a colour");
    assertThat(preferences.inkProperty(false, Ink.NOTE).get()).isEmpty();
  }

  @Test
  void two_parts_that_would_be_confused_are_named() throws Exception {
    assertThat(text("inks", "preferences-inks-sight")).startsWith("✓");
    type("rest", "#a05000");
    type("reciprocal", "#546c00");

    assertThat(text("inks", "preferences-inks-sight"))
        .contains("Rests and Reciprocal arms look alike to people who lack the cones for green");
  }

  @Test
  void resets_are_taken_back_one_after_the_other_until_the_window_is_closed() throws Exception {
    OnStage.run(
        () -> {
          preferences.notationProperty().set(Notation.UNIVERSAL);
          preferences.inkProperty(true, Ink.NOTE).set(Optional.of("#ffffff"));
          return null;
        });
    press("inks", "preferences-reset");
    assertThat(preferences.notationProperty().get()).isEqualTo(Notation.UNIVERSAL);
    press("inks", "preferences-reset-all");
    assertThat(preferences.isUsual()).isTrue();

    press("inks", "preferences-take-back");
    assertThat(preferences.notationProperty().get()).isEqualTo(Notation.UNIVERSAL);
    press("inks", "preferences-take-back");
    assertThat(preferences.inkProperty(true, Ink.NOTE).get()).contains("#ffffff");
    assertThat(on("inks", "preferences-take-back", Button.class).isDisable()).isTrue();

    press("inks", "preferences-reset-all");
    OnStage.run(
        () -> {
          desk.window.preferences().orElseThrow().hide();
          return null;
        });
    assertThat(on("inks", "preferences-take-back", Button.class).isDisable()).isTrue();
  }

  @Test
  void a_new_case_is_judged_by_the_school_that_is_chosen() throws Exception {
    Path broken = Files.writeString(folder.resolve("broken.json"), "{");
    OnStage.run(
        () -> {
          preferences.schoolProperty().set(NewCaseSchool.of(Profile.HYGIENE_FIRST));
          desk.window.files().create();
          return null;
        });
    assertThat(desk.table().current().profile()).isEqualTo(Profile.HYGIENE_FIRST);

    OnStage.run(
        () -> {
          desk.table().close();
          preferences.schoolProperty().set(NewCaseSchool.of(broken));
          desk.window.files().create();
          return null;
        });
    assertThat(desk.table().current().profile()).isEqualTo(Profile.UK_TEACHING);
    assertThat(desk.table().noticeProperty().get().orElseThrow())
        .contains("broken.json", "is judged by UK teaching instead");
    assertThat(text("school", "preferences-school-trouble")).contains("broken.json");
  }

  @Test
  void my_details_are_kept_and_emptied_and_brought_back() throws Exception {
    TextField name = on("mine", "preferences-" + Item.PRESCRIBER_NAME.key(), TextField.class);
    OnStage.run(
        () -> {
          name.setText("A. Example");
          pane.show("files");
          return null;
        });
    assertThat(folder.resolve("my-details.properties")).content().contains("A. Example");

    press("mine", "preferences-reset");
    assertThat(preferences.mine().orElseThrow().known()).isEmpty();
    assertThat(name.getText()).isEmpty();
    press("mine", "preferences-take-back");
    assertThat(preferences.mine().orElseThrow().known())
        .containsEntry(Item.PRESCRIBER_NAME, "A. Example");
  }

  @Test
  void every_file_has_its_path_to_read_and_to_copy() throws Exception {
    TextField path = on("files", "preferences-place-preferences", TextField.class);

    assertThat(path.getText()).isEqualTo(folder.resolve(Preferences.FILE).toString());
    assertThat(path.isEditable()).isFalse();
  }

  @Test
  void trouble_with_the_file_is_said_when_the_program_starts() throws Exception {
    desk.close();
    Files.writeString(folder.resolve(Preferences.FILE), "paper = papyrus\n");
    desk = OnStage.open(folder);

    assertThat(desk.table().noticeProperty().get().orElseThrow())
        .contains("line 1: paper is “papyrus”, which is not one of a4, letter");
    assertThat(List.of(folder.resolve(Preferences.FILE))).allMatch(Files::exists);
  }
}
