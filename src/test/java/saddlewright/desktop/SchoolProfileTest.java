package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.control.TreeTableView;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.json.ProfileStore;
import saddlewright.desktop.panels.SchoolPane;
import saddlewright.rules.Profile;
import saddlewright.rules.Quantity;
import saddlewright.rules.Severity;

/** The school profile in the window: chosen, changed, undone, kept in files. */
class SchoolProfileTest {
  private static final Path LOWER_CLASS_ONE = Path.of("demo-cases/01-lower-class-1-rpi.json");

  @TempDir Path folder;
  private OnStage w;

  @BeforeEach
  void open() throws Exception {
    w = OnStage.open(folder.resolve("settings"));
    OnStage.run(
        () -> {
          w.table().lay(CaseStore.load(LOWER_CLASS_ONE), Optional.empty());
          w.table().schoolShownProperty().set(true);
          return null;
        });
    w.settle();
  }

  @AfterEach
  void close() throws Exception {
    w.close();
  }

  private SchoolPane pane() {
    return w.window.school().orElseThrow().pane();
  }

  private <N extends Node> N find(String id, Class<N> kind) throws Exception {
    N found = OnStage.run(() -> kind.cast(pane().lookup("#" + id)));
    assertThat(found).as(id).isNotNull();
    return found;
  }

  /** Does something and waits until the pane shows what has become of it. */
  private void act(Runnable action) throws Exception {
    for (Runnable r : new Runnable[] {action, () -> {}, () -> {}}) {
      OnStage.run(
          () -> {
            r.run();
            pane().applyCss();
            pane().layout();
            return null;
          });
    }
    w.settle();
  }

  private void set(Quantity quantity, String value) throws Exception {
    act(() -> pane().choose(quantity));
    TextField field = find("school-value", TextField.class);
    act(
        () -> {
          field.setText(value);
          field.fireEvent(new javafx.event.ActionEvent());
        });
  }

  private Profile school() {
    return w.table().current().profile();
  }

  @Test
  void every_limit_and_every_rule_is_listed_and_found_by_words() throws Exception {
    TreeTableView<?> rows = find("school-rows", TreeTableView.class);
    int all = rows.getRoot().getChildren().stream().mapToInt(c -> c.getChildren().size()).sum();
    assertThat(all)
        .isEqualTo(Quantity.values().length + saddlewright.rules.RuleBook.rules().size());
    TextField filter = find("school-filter", TextField.class);
    act(() -> filter.setText("wrought steel limit-less-words"));
    assertThat(rows.getRoot().getChildren()).isEmpty();
    act(() -> filter.setText("stainless undercut"));
    assertThat(rows.getRoot().getChildren()).isNotEmpty();
  }

  @Test
  void a_changed_limit_makes_a_school_of_its_own_judges_at_once_and_is_undone_by_name()
      throws Exception {
    long before = w.table().assessment().report().entries().size();
    // A lower bar needs more room than was charted: the depth must be found wanting at once.
    set(Quantity.LINGUAL_BAR_DEPTH_LEAST, "20");
    set(Quantity.LINGUAL_BAR_DEPTH, "30");
    assertThat(school().standing()).isEqualTo(Profile.Standing.OWN);
    assertThat(school().limit(Quantity.LINGUAL_BAR_DEPTH)).isEqualTo(30);
    assertThat(school().departures()).hasSize(2);
    assertThat(w.table().assessment().report().count(Severity.MUST)).isPositive();
    assertThat(w.table().assessment().report().entries().size()).isGreaterThan((int) before);
    assertThat(w.table().undoNameProperty().get())
        .contains("Limit: " + Quantity.LINGUAL_BAR_DEPTH.words());
    act(() -> find("school-only-departures").fire());
    TreeTableView<?> rows = find("school-rows", TreeTableView.class);
    assertThat(rows.getRoot().getChildren()).hasSize(1);
    assertThat(rows.getRoot().getChildren().get(0).getChildren()).hasSize(2);
    Button reset = find("school-reset", Button.class);
    act(reset::fire);
    assertThat(school().departures()).hasSize(1);
    act(() -> w.table().undo());
    act(() -> w.table().undo());
    act(() -> w.table().undo());
    assertThat(school()).isEqualTo(Profile.UK_TEACHING);
    assertThat(w.table().assessment().report().entries()).hasSize((int) before);
  }

  private CheckBox find(String id) {
    return (CheckBox) pane().lookup("#" + id);
  }

  @Test
  void an_implausible_limit_is_refused_beside_its_field() throws Exception {
    set(Quantity.LINGUAL_BAR_DEPTH, "80");
    assertThat(school()).isEqualTo(Profile.UK_TEACHING);
    assertThat(
            OnStage.run(
                () ->
                    pane().lookupAll(".field-error").stream()
                        .map(n -> ((Labeled) n).getText())
                        .toList()))
        .contains("80 mm is not plausible; give 2 to 32 mm.");
  }

  @Test
  @SuppressWarnings("unchecked")
  void the_case_form_offers_the_built_in_profiles_and_the_cases_own() throws Exception {
    set(Quantity.LINGUAL_BAR_DEPTH, "7");
    Profile own = school();
    ComboBox<Profile> choice =
        (ComboBox<Profile>) OnStage.run(() -> w.find("case-school", ComboBox.class));
    assertThat(choice.getItems())
        .containsExactly(
            Profile.UK_TEACHING, Profile.NORTH_AMERICAN_TEACHING, Profile.HYGIENE_FIRST, own);
    act(() -> choice.setValue(Profile.HYGIENE_FIRST));
    assertThat(school()).isEqualTo(Profile.HYGIENE_FIRST);
    assertThat(w.table().undoNameProperty().get()).contains("School profile: Hygiene first");
    ComboBox<Profile> again =
        (ComboBox<Profile>) OnStage.run(() -> w.find("case-school", ComboBox.class));
    assertThat(again.getItems()).as("the own one can be taken again").contains(own);
  }

  @Test
  void a_profile_goes_out_to_a_file_and_comes_in_again() throws Exception {
    set(Quantity.LINGUAL_BAR_DEPTH, "7");
    Path file = folder.resolve("school");
    act(() -> pane().exportTo(file));
    Path written = folder.resolve("school.json");
    assertThat(ProfileStore.load(written).profile()).isEqualTo(school());
    Profile own = school();
    act(() -> w.table().undo());
    act(() -> pane().importFrom(written));
    assertThat(school()).isEqualTo(own);
    Path broken = Files.writeString(folder.resolve("broken.json"), "{}");
    act(() -> pane().importFrom(broken));
    assertThat(find("school-trouble", Label.class).getText())
        .startsWith("broken.json is JSON but not a school profile");
    assertThat(school()).isEqualTo(own);
  }

  @Test
  void every_field_has_a_name_for_those_who_hear_it() throws Exception {
    act(() -> pane().choose(Quantity.LINGUAL_BAR_DEPTH));
    for (String id :
        new String[] {
          "school-filter", "school-rows", "school-profile", "school-axis", "school-value"
        }) {
      assertThat(find(id, Node.class).getAccessibleText()).as(id).isNotBlank();
    }
  }
}
