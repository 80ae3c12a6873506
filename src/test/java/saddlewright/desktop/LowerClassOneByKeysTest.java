package saddlewright.desktop;

import static javafx.scene.input.KeyCode.DIGIT2;
import static javafx.scene.input.KeyCode.DIGIT3;
import static javafx.scene.input.KeyCode.DIGIT5;
import static javafx.scene.input.KeyCode.DIGIT7;
import static javafx.scene.input.KeyCode.DIGIT8;
import static javafx.scene.input.KeyCode.END;
import static javafx.scene.input.KeyCode.ENTER;
import static javafx.scene.input.KeyCode.HOME;
import static javafx.scene.input.KeyCode.LEFT;
import static javafx.scene.input.KeyCode.N;
import static javafx.scene.input.KeyCode.RIGHT;
import static javafx.scene.input.KeyCode.S;
import static javafx.scene.input.KeyCode.SPACE;
import static org.assertj.core.api.Assertions.assertThat;
import static saddlewright.desktop.Keys.Held.CONTROL;

import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.FileChooser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.json.CaseStore;
import saddlewright.classification.KennedyClass;
import saddlewright.design.ArchDesign;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Rest;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.TissueStop;
import saddlewright.rules.Finding;
import saddlewright.rules.Severity;

/** A lower Class I (36–38, 46–48 missing) is designed from nothing by keyboard alone. */
class LowerClassOneByKeysTest {

  @Test
  void from_the_welcome_page_to_a_saved_design_with_no_grave_finding(@TempDir Path folder)
      throws Exception {
    Path saved = folder.resolve("by-keys.saddle");
    try (OnStage w = OnStage.open(folder.resolve("settings"))) {
      Keys k = new Keys(w);
      k.press(N, CONTROL);
      assertThat(OnStage.run(() -> w.table().openProperty().get())).isTrue();
      k.press(DIGIT2, CONTROL);

      // Chart: from the left end of the arch inwards, then from the right.
      assertThat(k.focused()).isSameAs(OnStage.run(() -> w.window.sheet()));
      k.press(END);
      assertThat(k.told()).contains("Lower left third molar, 38, standing");
      k.press(ENTER);
      assertThat(k.told()).contains("38, missing");
      k.press(LEFT);
      k.press(ENTER);
      k.press(LEFT);
      k.press(ENTER);
      k.press(HOME);
      k.press(ENTER);
      k.press(RIGHT);
      k.press(ENTER);
      k.press(RIGHT);
      k.press(ENTER);
      assertThat(w.table().assessment().lower().classification().kennedy())
          .isEqualTo(KennedyClass.I);

      // Survey: undercuts of 0.25 mm where the tips of the I-bars shall lie.
      k.press(DIGIT2);
      k.press(RIGHT);
      k.toSite("mid-buccal");
      k.press(ENTER);
      k.times(9, RIGHT);
      assertThat(k.told()).contains("35, standing").contains("At mid-buccal");
      k.press(ENTER);

      k.press(DIGIT3);
      k.press(RIGHT);
      k.press(ENTER);
      k.times(11, LEFT);
      k.press(ENTER);

      k.press(DIGIT5);
      k.press(RIGHT);
      k.toSite("mid-buccal");
      assertThat(k.told()).contains("RPI set 45").contains("arm").contains("0.25 mm");
      k.press(ENTER);
      k.times(9, RIGHT);
      k.press(ENTER);

      k.press(DIGIT8);
      k.times(2, LEFT);
      k.toSite("cingulum");
      k.press(ENTER);
      k.times(5, LEFT);
      k.press(ENTER);

      k.press(DIGIT7);
      k.press(SPACE);
      k.choose("Lingual bar");

      FileQuestion.answerBy(Optional.of(savingAs(saved)));
      k.press(S, CONTROL);
      FileQuestion.answerBy(Optional.empty());
      System.out.println("Keys pressed for a lower Class I: " + k.presses());

      ArchDesign d = w.table().current().lowerDesign();
      assertThat(d.all(Saddle.class))
          .extracting(s -> s.span().toString())
          .containsExactlyInAnyOrder("36–38", "48–46");
      assertThat(d.all(RetentionMesh.class)).hasSize(2);
      assertThat(d.all(TissueStop.class)).hasSize(2);
      assertThat(d.all(Rest.class)).hasSize(4);
      assertThat(d.all(GuidePlate.class)).hasSize(2);
      assertThat(d.all(Clasp.class))
          .extracting(Clasp::form)
          .containsExactly(ClaspForm.I_BAR, ClaspForm.I_BAR);
      assertThat(d.all(MinorConnector.class)).hasSize(4);
      assertThat(d.all(MajorConnector.class)).hasSize(1);
      assertThat(w.table().assessment().report().standing())
          .filteredOn(f -> f.severity() == Severity.MUST)
          .extracting(Finding::sentence)
          .isEmpty();
      assertThat(CaseStore.load(saved).lowerDesign()).isEqualTo(d);
      assertThat(k.presses()).isLessThan(90);
    }
  }

  private static FileQuestion.Answering savingAs(Path file) {
    return new FileQuestion.Answering() {
      @Override
      public Optional<Path> toOpen(FileChooser question) {
        return Optional.empty();
      }

      @Override
      public Optional<Path> toSave(FileChooser question) {
        return Optional.of(file);
      }
    };
  }
}
