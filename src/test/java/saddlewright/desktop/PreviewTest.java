package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.Slider;
import javafx.scene.control.TextInputControl;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import javafx.stage.Window;
import javax.print.attribute.standard.MediaSizeName;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.order.Item;
import saddlewright.desktop.preview.PreviewPane;
import saddlewright.prescription.Issue;
import saddlewright.prescription.pdf.Paper;
import saddlewright.prescription.pdf.print.Margins;
import saddlewright.prescription.pdf.print.PaperPrinter;
import saddlewright.prescription.pdf.print.Printer;
import saddlewright.prescription.pdf.reading.CaseDocument;

/** The pages of the prescription are looked at and printed from, by keys and buttons. */
class PreviewTest {
  @TempDir Path folder;
  private OnStage w;

  @BeforeEach
  void open() throws Exception {
    w = OnStage.open(folder.resolve("settings"));
    OnStage.run(
        () -> {
          w.window.files().load(Path.of("demo-cases/03-both-arches.json"));
          w.table().pagesShownProperty().set(true);
          return null;
        });
    settle();
  }

  @AfterEach
  void close() throws Exception {
    OnStage.run(
        () -> {
          w.table().pagesShownProperty().set(false);
          return null;
        });
    w.close();
  }

  private PreviewPane pane() {
    return w.window.preview().orElseThrow().pane();
  }

  private void settle() throws Exception {
    await("the pages are shown", () -> pane().isSettled());
  }

  private static void await(String what, Callable<Boolean> done) throws Exception {
    for (int i = 0; i < 2000; i++) {
      if (OnStage.run(done)) {
        return;
      }
      Thread.sleep(10);
    }
    throw new AssertionError("waited in vain until " + what);
  }

  private <N extends Node> N find(String id, Class<N> kind) throws Exception {
    return OnStage.run(() -> kind.cast(pane().getScene().lookup("#" + id)));
  }

  private Image picture(int page) throws Exception {
    Node view = find("page-" + page, Node.class);
    return OnStage.run(() -> ((ImageView) view.lookup(".image-view")).getImage());
  }

  private void key(KeyCode code) throws Exception {
    OnStage.run(
        () -> {
          Node pages = pane().getScene().lookup("#pages");
          Event.fireEvent(
              pages, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false));
          return null;
        });
    settle();
  }

  private void edit(Runnable change) throws Exception {
    OnStage.run(
        () -> {
          change.run();
          return null;
        });
    settle();
  }

  private void rename() {
    Case c = w.table().current();
    w.table().apply("title", c.withIdentity(c.reference(), "Another title", c.story()));
  }

  private String pageNumber() throws Exception {
    TextInputControl field = find("pages-number", TextInputControl.class);
    return OnStage.run(field::getText);
  }

  private static boolean isColoured(Image image) {
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        int p = image.getPixelReader().getArgb(x, y);
        if (Math.abs((p >> 16 & 255) - (p & 255)) > 40) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean same(Image a, Image b) {
    for (int y = 0; y < a.getHeight(); y++) {
      for (int x = 0; x < a.getWidth(); x++) {
        if (a.getPixelReader().getArgb(x, y) != b.getPixelReader().getArgb(x, y)) {
          return false;
        }
      }
    }
    return true;
  }

  @Test
  void every_page_stands_in_the_column_and_among_the_small_ones() throws Exception {
    ListView<?> small = find("thumbnails", ListView.class);
    int count = OnStage.run(() -> small.getItems().size());
    assertThat(count).isGreaterThan(3);
    assertThat(find("page-" + count, Node.class)).isNotNull();
    assertThat(find("page-" + (count + 1), Node.class)).isNull();
    Image first = picture(1);
    // ISO 216: A4 is 210 mm by 297 mm.
    assertThat(first.getHeight() / first.getWidth()).isCloseTo(297.0 / 210, within(0.01));
    key(KeyCode.PAGE_DOWN);
    assertThat(isColoured(picture(2))).as("the design sheet").isTrue();
  }

  @Test
  void the_page_follows_the_case_and_undo() throws Exception {
    Image before = picture(1);
    edit(this::rename);
    Image changed = picture(1);
    assertThat(same(before, changed)).isFalse();
    edit(() -> w.table().undo());
    assertThat(same(before, picture(1))).isTrue();
  }

  @Test
  void keys_turn_the_pages_and_the_page_can_be_heard() throws Exception {
    int count = find("thumbnails", ListView.class).getItems().size();
    key(KeyCode.PAGE_DOWN);
    assertThat(pageNumber()).isEqualTo("2");
    key(KeyCode.END);
    assertThat(pageNumber()).isEqualTo(String.valueOf(count));
    key(KeyCode.HOME);
    assertThat(pageNumber()).isEqualTo("1");
    Node page = find("page-1", Node.class);
    assertThat(OnStage.run(page::isFocused)).as("the page turned to holds the keyboard").isTrue();
    await("the page has words", () -> page.getAccessibleText().contains("HTC-0103"));
    assertThat(page.getAccessibleText()).startsWith("Page 1 of " + count);
  }

  @Test
  void an_edit_leaves_the_page_that_is_looked_at() throws Exception {
    key(KeyCode.PAGE_DOWN);
    key(KeyCode.PAGE_DOWN);
    edit(this::rename);
    assertThat(pageNumber()).isEqualTo("3");
  }

  @Test
  void paper_and_ink_are_chosen_above_the_pages() throws Exception {
    ComboBox<?> paper = find("pages-paper", ComboBox.class);
    edit(() -> paper.getSelectionModel().select(1));
    Image letter = picture(1);
    // ANSI/ASME Y14.1, size A: 8.5 by 11 inches.
    assertThat(letter.getHeight() / letter.getWidth()).isCloseTo(11 / 8.5, within(0.01));
    ComboBox<?> ink = find("pages-ink", ComboBox.class);
    key(KeyCode.PAGE_DOWN);
    assertThat(isColoured(picture(2))).isTrue();
    edit(() -> ink.getSelectionModel().select(1));
    assertThat(isColoured(picture(2))).isFalse();
  }

  @Test
  void true_size_is_so_many_pixels_as_the_screen_has_in_a_page() throws Exception {
    double pixelsPerMm =
        OnStage.run(
            () -> {
              javafx.stage.Screen s = javafx.stage.Screen.getPrimary();
              return s.getDpi() / s.getOutputScaleX() / 25.4;
            });
    ComboBox<?> zoom = find("pages-zoom", ComboBox.class);
    edit(() -> zoom.getSelectionModel().select(4));
    Node page = find("page-1", Node.class);
    assertThat(OnStage.run(() -> page.getLayoutBounds().getWidth()))
        .isCloseTo(210 * pixelsPerMm, within(1.0));
  }

  @Test
  void the_window_goes_with_its_case() throws Exception {
    Stage stage = w.window.preview().orElseThrow().stage();
    assertThat(OnStage.run(stage::isShowing)).isTrue();
    OnStage.run(
        () -> {
          w.table().close();
          return null;
        });
    assertThat(OnStage.run(stage::isShowing)).isFalse();
  }

  private Node inDialog(String id) throws Exception {
    return OnStage.run(
        () ->
            Window.getWindows().stream()
                .filter(win -> win.getScene() != null)
                .map(win -> win.getScene().lookup("#" + id))
                .filter(java.util.Objects::nonNull)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + id)));
  }

  private Button askToPrint(List<Printer> printers) throws Exception {
    OnStage.run(
        () -> {
          pane().setPrinters(() -> printers);
          ((Button) pane().getScene().lookup("#pages-print")).fire();
          return null;
        });
    Labeled verdict = (Labeled) inDialog("print-verdict");
    await("the printer has been asked", () -> !verdict.getText().endsWith("…"));
    return (Button) inDialog("print-now");
  }

  private void closeDialog() throws Exception {
    Node form = inDialog("print-form");
    OnStage.run(
        () -> {
          form.getScene().getWindow().hide();
          return null;
        });
  }

  @Test
  void without_a_printer_it_says_so_and_what_to_do() throws Exception {
    Button print = askToPrint(List.of());
    assertThat(((Labeled) inDialog("print-verdict")).getText())
        .isEqualTo(
            "No printer is set up on this computer. Save the PDF and print it elsewhere, at 100 %.");
    assertThat(print.isDisabled()).isTrue();
    closeDialog();
  }

  @Test
  void a_printer_that_would_cut_is_used_only_when_that_is_accepted() throws Exception {
    Button print =
        askToPrint(
            List.of(
                PaperPrinter.taking(
                    new ByteArrayOutputStream(),
                    Optional.of(new Margins(5, 5, 5, 25)),
                    MediaSizeName.ISO_A4)));
    assertThat(((Labeled) inDialog("print-verdict")).getText())
        .contains("Front desk leaves 25.0 mm blank at the bottom edge", "would be cut off");
    assertThat(print.isDisabled()).isTrue();
    CheckBox accept = (CheckBox) inDialog("print-accept");
    OnStage.run(
        () -> {
          accept.setSelected(true);
          return null;
        });
    assertThat(print.isDisabled()).isFalse();
    closeDialog();
  }

  @Test
  void a_printer_without_the_paper_is_not_used() throws Exception {
    Button print =
        askToPrint(
            List.of(
                PaperPrinter.taking(
                    new ByteArrayOutputStream(),
                    Optional.of(new Margins(5, 5, 5, 5)),
                    MediaSizeName.NA_LETTER)));
    assertThat(((Labeled) inDialog("print-verdict")).getText())
        .contains("Front desk has no paper of 210 × 297 mm");
    assertThat(print.isDisabled()).isTrue();
    closeDialog();
  }

  @Test
  void what_fits_is_printed_and_told() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Button print =
        askToPrint(
            List.of(
                PaperPrinter.taking(
                    out, Optional.of(new Margins(5, 5, 5, 5)), MediaSizeName.ISO_A4)));
    assertThat(((Labeled) inDialog("print-verdict")).getText())
        .isEqualTo("✓ At true scale (100 %), with nothing cut off.");
    OnStage.run(
        () -> {
          print.fire();
          return null;
        });
    await("it has been printed", () -> w.table().noticeProperty().get().isPresent());
    int count = find("thumbnails", ListView.class).getItems().size();
    assertThat(w.table().noticeProperty().get().orElseThrow())
        .startsWith(count + " pages have been sent to Front desk.");
    assertThat(out.toString(StandardCharsets.ISO_8859_1).split("(?m)^showpage").length - 1)
        .isEqualTo(count);
  }

  private String state() throws Exception {
    Labeled label = find("preview-state", Labeled.class);
    return OnStage.run(label::getText);
  }

  private static Issue issue(Worktable table) {
    return new Issue(table.assessment(), Optional.empty(), LocalDate.of(2026, 11, 3));
  }

  @Test
  void kind_and_revision_stand_below_the_pages_and_follow_issue_change_and_undo() throws Exception {
    assertThat(find("preview-kind", Labeled.class).getText()).isEqualTo("Laboratory prescription");
    assertThat(state()).startsWith("Revision 1 (draft)");
    Path pdf = folder.resolve("r1.pdf");
    edit(() -> w.window.prescriptions().issue(pdf, issue(w.table())));
    assertThat(pdf).exists();
    assertThat(state()).startsWith("Revision 1, issued 3 November 2026 · ");
    assertThat(w.table().noticeProperty().get().orElseThrow())
        .startsWith("r1.pdf has been written and the case records its issue: save the case.");
    assertThat(CaseDocument.load(pdf))
        .as("the document holds its issue")
        .isEqualTo(w.table().current());

    edit(this::rename);
    assertThat(state()).startsWith("Revision 2 (draft), replaces revision 1 of 3 November 2026 · ");
    edit(() -> w.table().undo());
    assertThat(w.table().undoNameProperty().get()).contains("Issue of revision 1");
    edit(() -> w.table().undo());
    assertThat(state()).as("one edit, taken back").startsWith("Revision 1 (draft)");
  }

  @Test
  void what_cannot_be_written_is_not_recorded() throws Exception {
    Path nowhere = folder.resolve("nowhere").resolve("r1.pdf");
    edit(() -> w.window.prescriptions().issue(nowhere, issue(w.table())));
    assertThat(w.table().current().prescription().issued()).isEmpty();
    assertThat(w.table().noticeProperty().get().orElseThrow())
        .startsWith("r1.pdf was not saved: the folder");
  }

  @Test
  void issuing_with_gaps_names_them_and_leads_to_the_first() throws Exception {
    edit(
        () ->
            w.table()
                .apply(
                    "shade",
                    w.table()
                        .current()
                        .with(w.table().current().prescription().with(Item.TOOTH_SHADE, ""))));
    OnStage.run(
        () -> {
          ((Button) pane().getScene().lookup("#pages-issue")).fire();
          return null;
        });
    assertThat(((Labeled) inDialog("issue-missing")).getText())
        .isEqualTo("One thing that must be filled in is missing:");
    Button first = (Button) inDialog("issue-first");
    OnStage.run(
        () -> {
          first.fire();
          return null;
        });
    assertThat(w.table().stepProperty().get()).isEqualTo(Step.PRESCRIPTION);
    assertThat(w.table().current().prescription().issued()).isEmpty();
  }

  @Test
  void a_screen_that_tells_a_wrong_size_can_be_measured_and_is_remembered() throws Exception {
    ComboBox<?> zoom = find("pages-zoom", ComboBox.class);
    edit(() -> zoom.getSelectionModel().select(4));
    OnStage.run(
        () -> {
          ((javafx.scene.control.Hyperlink) pane().getScene().lookup("#pages-measure")).fire();
          return null;
        });
    Slider slider = (Slider) inDialog("screen-slider");
    Button take = (Button) inDialog("screen-take");
    edit(
        () -> {
          slider.setValue(5);
          take.fire();
        });
    Node page = find("page-1", Node.class);
    assertThat(OnStage.run(() -> page.getLayoutBounds().getWidth()))
        .isCloseTo(210 * 5, within(1.0));
    assertThat(Files.readString(folder.resolve("settings/printing.properties")))
        .containsPattern("screen\\.\\d+x\\d+@\\d+=5\\.0");
  }

  @Test
  void the_paper_is_remembered() throws Exception {
    ComboBox<?> paper = find("pages-paper", ComboBox.class);
    edit(() -> paper.getSelectionModel().select(1));
    try (OnStage again = OnStage.open(folder.resolve("settings"))) {
      assertThat(again.table().paperProperty().get()).isEqualTo(Paper.LETTER);
    }
  }
}
