package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.classification.KennedyClass;
import saddlewright.dentition.Arch;
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

/** A lower Class I (36–38, 46–48 missing) is designed from nothing by pointer alone. */
class LowerClassOneByPointerTest {

  @Test
  void from_a_new_case_to_a_design_with_no_grave_finding(@TempDir Path settings) throws Exception {
    try (OnStage w = OnStage.open(settings)) {
      assertThat(w.find("welcome", javafx.scene.Node.class).isVisible()).isTrue();
      w.press("welcome-new");
      w.press("show-LOWER");

      w.drag(36, 37, 38);
      w.drag(46, 47, 48);
      assertThat(w.table().assessment().lower().classification().kennedy())
          .isEqualTo(KennedyClass.I);

      w.press("step-SURVEY");
      w.click(35, 0, 1.1);
      w.click(45, 0, 1.1);

      w.press("step-SADDLES");
      w.click(37, 0, 0);
      w.click(47, 0, 0);

      w.press("step-RETENTION");
      w.hover(35, 0, 1.1);
      assertThat(w.find("ghost-caption", javafx.scene.control.Label.class).getText())
          .contains("RPI set 35");
      w.click(35, 0, 1.1);
      w.click(45, 0, 1.1);

      w.press("step-INDIRECT_RETENTION");
      w.click(33, 0, -0.5);
      w.click(43, 0, -0.5);

      w.press("step-CONNECTORS");
      w.press("tool-connector-LINGUAL_BAR");
      w.clickMidline(Arch.LOWER, 25);

      ArchDesign d = w.table().current().lowerDesign();
      assertThat(d.all(Saddle.class))
          .extracting(s -> s.span().toString())
          .containsExactly("36–38", "48–46");
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
    }
  }
}
