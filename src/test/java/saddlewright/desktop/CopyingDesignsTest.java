package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.input.Clipboard;
import javafx.scene.input.DataFormat;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.Clasp;
import saddlewright.design.Subject;
import saddlewright.desktop.actions.Actions;

/** Designs and components through the clipboard: between cases, arches and sides. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CopyingDesignsTest {
  private OnStage w;
  private Case lowerOne;

  @BeforeAll
  void open(@TempDir Path folder) throws Exception {
    w = OnStage.open(folder);
    w.settle();
    lowerOne = CaseStore.load(Path.of("demo-cases/01-lower-class-1-rpi.json"));
  }

  @AfterAll
  void close() throws Exception {
    w.close();
  }

  @BeforeEach
  void lay() throws Exception {
    onStage(
        () -> {
          w.table().noticeProperty().set(Optional.empty());
          w.table().lay(lowerOne, Optional.empty());
          w.table().stepProperty().set(Step.REVIEW);
        });
  }

  private static void onStage(Runnable r) throws Exception {
    OnStage.run(
        () -> {
          r.run();
          return null;
        });
  }

  private void choose(String key) throws Exception {
    String name = Words.of(key).replace("_", "");
    onStage(
        () ->
            Actions.of(w.window.menus()).stream()
                .filter(a -> a.name().equals(name) && a.ready())
                .findFirst()
                .orElseThrow(() -> new AssertionError("no ready action " + name))
                .run());
  }

  private String notice() throws Exception {
    return OnStage.run(() -> w.table().noticeProperty().get().orElse(""));
  }

  private void offer(int n) throws Exception {
    onStage(
        () ->
            ((Button) w.find("notice", javafx.scene.Node.class).lookupAll(".offer").toArray()[n])
                .fire());
  }

  /** What the sheet shows while the keyboard is on an answer. */
  private ArchDesign shownBy(int n) throws Exception {
    return OnStage.run(
        () -> {
          w.window.stage().requestFocus();
          ((Button) w.find("notice", javafx.scene.Node.class).lookupAll(".offer").toArray()[n])
              .requestFocus();
          return w.table()
              .previewProperty()
              .get()
              .orElseThrow()
              .edit()
              .applyTo(w.table().current().lowerDesign());
        });
  }

  private ArchDesign lower() {
    return w.table().current().lowerDesign();
  }

  @Test
  void a_design_goes_to_another_case_as_one_edit_and_all_or_what_fits_is_asked() throws Exception {
    choose("edit.copy-design");
    Case other = Case.blank("SW-2222-2222");
    for (int fdi : new int[] {36, 37, 38, 46, 47, 48, 45}) {
      other =
          other.with(
              other
                  .lowerChart()
                  .with(
                      Tooth.of(fdi),
                      other.lowerChart().tooth(Tooth.of(fdi)).withStatus(ToothStatus.MISSING)));
    }
    Case target = other;
    onStage(() -> w.table().lay(target, Optional.empty()));
    choose("edit.paste-a-design");
    assertThat(notice()).startsWith("Not all fits this mouth: ").contains("(no tooth at 45)");
    assertThat(lower().components()).as("nothing is done unasked").isEmpty();
    assertThat(shownBy(0)).isEqualTo(lowerOne.lowerDesign());
    assertThat(shownBy(1).all(Clasp.class)).extracting(Clasp::tooth).containsExactly(Tooth.T35);
    offer(1);
    assertThat(lower().all(Clasp.class)).extracting(Clasp::tooth).containsExactly(Tooth.T35);
    assertThat(w.table().previewProperty().get()).isEmpty();
    onStage(() -> w.table().undo());
    assertThat(w.table().current()).as("one edit").isEqualTo(target);

    choose("edit.paste-a-design");
    offer(0);
    assertThat(lower()).isEqualTo(lowerOne.lowerDesign());
    choose("edit.paste-a-design");
    offer(2);
    assertThat(w.table().previewProperty().get()).isEmpty();
    assertThat(notice()).isEmpty();
  }

  @Test
  void what_is_asked_is_no_longer_shown_once_it_is_dismissed() throws Exception {
    choose("edit.copy-design");
    onStage(() -> w.table().lay(Case.blank("SW-2222-2222"), Optional.empty()));
    choose("edit.paste-a-design");
    assertThat(shownBy(0).components()).isNotEmpty();
    onStage(() -> w.table().noticeProperty().set(Optional.empty()));
    assertThat(w.table().previewProperty().get()).isEmpty();
  }

  @Test
  void on_the_other_arch_it_is_said_what_becomes_of_the_connector() throws Exception {
    choose("edit.copy-design");
    onStage(() -> w.table().select(Subject.of(Arch.UPPER)));
    choose("edit.paste-a-design");
    offer(0);
    assertThat(notice()).contains("becomes a").contains("Left out, since the upper arch");
    assertThat(w.table().current().upperDesign().all(Clasp.class))
        .extracting(Clasp::tooth)
        .containsExactlyInAnyOrder(Tooth.T15, Tooth.T25);
    assertThat(lower()).isEqualTo(lowerOne.lowerDesign());
  }

  @Test
  void a_component_goes_to_the_tooth_that_is_selected_and_otherwise_to_the_other_side()
      throws Exception {
    Clasp clasp =
        lower().all(Clasp.class).stream()
            .filter(c -> c.tooth() == Tooth.T35)
            .findFirst()
            .orElseThrow();
    onStage(() -> w.table().select(Subject.of(Arch.LOWER, clasp)));
    choose("edit.copy");
    choose("edit.paste");
    assertThat(notice()).isEqualTo("It is there already.");
    onStage(() -> w.table().select(Subject.of(Tooth.T34)));
    choose("edit.paste");
    assertThat(lower().all(Clasp.class))
        .extracting(Clasp::tooth)
        .contains(Tooth.T34, Tooth.T35, Tooth.T45);
    assertThat(OnStage.run(() -> w.table().selected().flatMap(w.table()::component)))
        .get()
        .satisfies(c -> assertThat(c.teeth()).isEqualTo(List.of(Tooth.T34)));
    assertThat(w.table().undoNameProperty().get().orElseThrow()).startsWith("paste ");
  }

  @Test
  void it_lies_on_the_clipboard_as_a_text_that_can_be_pasted_too() throws Exception {
    choose("edit.copy-design");
    String text = OnStage.run(() -> Clipboard.getSystemClipboard().getString());
    assertThat(text).contains("saddlewright-case").doesNotContain(lowerOne.reference());
    onStage(
        () -> {
          Clipboard.getSystemClipboard().setContent(Map.of(DataFormat.PLAIN_TEXT, text));
          w.table().apply("x", lowerOne.with(ArchDesign.empty(Arch.LOWER)));
        });
    choose("edit.paste");
    assertThat(lower()).isEqualTo(lowerOne.lowerDesign());
    onStage(
        () -> Clipboard.getSystemClipboard().setContent(Map.of(DataFormat.PLAIN_TEXT, "{ a: 1")));
    choose("edit.paste");
    assertThat(notice()).isEqualTo("The clipboard holds no design, no components and no files.");
  }

  @Test
  void files_on_the_clipboard_are_opened() throws Exception {
    onStage(
        () ->
            Clipboard.getSystemClipboard()
                .setContent(
                    Map.of(
                        DataFormat.FILES,
                        List.of(Path.of("demo-cases/04-upper-class-4.json").toFile()))));
    choose("edit.paste");
    assertThat(w.window.desks().all()).hasSize(2);
    onStage(() -> w.window.desks().all().get(1).stage().hide());
  }
}
