package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.Backing;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ClaspUnit;
import saddlewright.design.Component;
import saddlewright.design.ConnectorForm;
import saddlewright.design.FinishLine;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.MinorConnector;
import saddlewright.design.Plating;
import saddlewright.design.PostDam;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Relief;
import saddlewright.design.Rest;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.TissueStop;

/** Each tool places what it names at a click, and every component can be selected and removed. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryToolTest {
  private OnStage w;

  @BeforeAll
  void open(@TempDir Path settings) throws Exception {
    w = OnStage.open(settings);
  }

  @AfterAll
  void close() throws Exception {
    w.close();
  }

  private static ArchChart missing(Arch arch, int... fdis) {
    ArchChart c = ArchChart.full(arch);
    for (int fdi : fdis) {
      c = c.with(Tooth.of(fdi), ToothFindings.of(ToothStatus.MISSING, GapDecision.REPLACED));
    }
    return c;
  }

  /** Upper 14–15 and 24–26 missing, lower 36–38 and 45–46 missing. */
  private void fresh(Worktable.Shown shown) throws Exception {
    OnStage.run(
        () -> {
          w.table()
              .lay(
                  Case.blank("case-1")
                      .with(missing(Arch.UPPER, 14, 15, 24, 25, 26))
                      .with(missing(Arch.LOWER, 36, 37, 38, 45, 46)),
                  Optional.empty());
          w.table().shownProperty().set(shown);
          return null;
        });
    w.settle();
  }

  private List<Component> placed(Arch arch) {
    return w.table().current().design(arch).components();
  }

  @Test
  void chart_tools_give_the_state_that_they_name() throws Exception {
    fresh(Worktable.Shown.LOWER);
    w.press("step-CHART");
    Object[][] expected = {
      {"missing", ToothStatus.MISSING, GapDecision.REPLACED},
      {"not-replaced", ToothStatus.MISSING, GapDecision.NOT_REPLACED},
      {"closed", ToothStatus.MISSING, GapDecision.CLOSED},
      {"extract", ToothStatus.TO_BE_EXTRACTED, GapDecision.REPLACED},
      {"root", ToothStatus.RETAINED_ROOT, GapDecision.REPLACED},
      {"unerupted", ToothStatus.UNERUPTED, GapDecision.REPLACED},
    };
    for (Object[] e : expected) {
      fresh(Worktable.Shown.LOWER);
      w.press("tool-chart-" + e[0]);
      w.click(34, 0, 0);
      ToothFindings f = w.table().current().lowerChart().tooth(Tooth.T34);
      assertThat(f.status()).as("%s", e[0]).isEqualTo(e[1]);
      assertThat(f.gap()).as("%s", e[0]).isEqualTo(e[2]);
    }
    w.press("tool-chart-implant");
    w.click(33, 0, 0);
    assertThat(w.table().current().lowerChart().tooth(Tooth.T33).status())
        .isEqualTo(ToothStatus.IMPLANT);
    w.press("tool-chart-standing");
    w.click(33, 0, 0);
    assertThat(w.table().current().lowerChart().tooth(Tooth.T33).status())
        .isEqualTo(ToothStatus.STANDING);
  }

  @Test
  void survey_charts_the_undercut_of_the_zone_pointed_at() throws Exception {
    fresh(Worktable.Shown.LOWER);
    w.press("step-SURVEY");
    w.press("tool-survey-075");
    w.click(47, 0.75, 0.75);
    w.press("tool-survey-025");
    w.click(47, -0.75, -0.75);
    assertThat(w.table().current().lowerChart().tooth(Tooth.T47).undercuts())
        .hasSize(2)
        .hasEntrySatisfying(Zone.MESIOBUCCAL, u -> assertThat(u.depth()).isEqualTo(0.75))
        .hasEntrySatisfying(Zone.DISTOLINGUAL, u -> assertThat(u.depth()).isEqualTo(0.25));
    w.press("tool-survey-none");
    w.click(47, 0.75, 0.75);
    assertThat(w.table().current().lowerChart().tooth(Tooth.T47).undercuts())
        .containsOnlyKeys(Zone.DISTOLINGUAL);
  }

  @Test
  void saddle_tools_place_each_part_over_the_gap() throws Exception {
    fresh(Worktable.Shown.LOWER);
    w.press("step-SADDLES");
    String[] tools = {"SADDLE", "MESH", "FINISH_LINE", "TISSUE_STOP", "BACKING"};
    Class<?>[] kinds = {
      Saddle.class, RetentionMesh.class, FinishLine.class, TissueStop.class, Backing.class
    };
    for (int i = 0; i < tools.length; i++) {
      w.press("tool-saddle-" + tools[i]);
      w.click(37, 0, 0);
      assertThat(placed(Arch.LOWER)).hasSize(i + 1);
      assertThat(placed(Arch.LOWER).get(i)).isInstanceOf(kinds[i]);
    }
    w.press("tool-saddle-COMPLETE");
    w.click(46, 0, 0);
    assertThat(placed(Arch.LOWER).subList(5, 8))
        .as("bounded: no tissue stop")
        .extracting(Object::getClass)
        .isEqualTo(List.of(Saddle.class, RetentionMesh.class, FinishLine.class));
  }

  @Test
  void support_places_each_form_with_the_strut_that_it_needs() throws Exception {
    for (Rest.Form form : Rest.Form.values()) {
      fresh(Worktable.Shown.LOWER);
      w.press("step-SUPPORT");
      w.press("tool-rest-" + form.name());
      w.click(34, -0.6, 0);
      assertThat(placed(Arch.LOWER)).as("%s", form).hasSize(2);
      assertThat(((Rest) placed(Arch.LOWER).get(0)).form()).isEqualTo(form);
      assertThat(placed(Arch.LOWER).get(1)).isInstanceOf(MinorConnector.class);
    }
    w.press("tool-rest-STANDARD");
    w.click(44, -0.6, 0);
    assertThat(placed(Arch.LOWER)).as("beside the gap no strut is needed").hasSize(3);
  }

  @Test
  void retention_places_the_form_that_was_chosen_and_tab_the_next() throws Exception {
    fresh(Worktable.Shown.LOWER);
    w.press("step-RETENTION");
    for (ClaspUnit unit : ClaspUnit.values()) {
      fresh(Worktable.Shown.LOWER);
      w.press("tool-clasp-" + unit.name());
      w.click(47, -0.75, 0.8);
      ClaspForm form =
          switch (unit) {
            case THREE_ARM, RPA, CIRCUMFERENTIAL -> ClaspForm.CIRCUMFERENTIAL;
            case RPI -> ClaspForm.I_BAR;
            // 46 is missing and stands in no embrasure with 47: the next best form is placed.
            case EMBRASURE_PAIR -> null;
            default -> ClaspForm.valueOf(unit.name());
          };
      if (form != null) {
        assertThat(w.table().current().lowerDesign().all(Clasp.class))
            .as("%s", unit)
            .extracting(Clasp::form)
            .containsExactly(form);
      }
    }
    fresh(Worktable.Shown.LOWER);
    w.press("tool-clasp-EMBRASURE_PAIR");
    fresh(Worktable.Shown.UPPER);
    w.click(17, -0.75, 0.8);
    assertThat(w.table().current().upperDesign().all(Clasp.class))
        .hasSize(2)
        .extracting(Clasp::form)
        .containsOnly(ClaspForm.EMBRASURE);

    fresh(Worktable.Shown.LOWER);
    w.press("tool-clasp-proposed");
    w.hover(47, -0.75, 0.8);
    var caption = w.find("ghost-caption", javafx.scene.control.Label.class);
    String first = caption.getText().lines().findFirst().orElse("");
    w.key(KeyCode.TAB);
    assertThat(caption.getText().lines().findFirst()).isPresent().get().isNotEqualTo(first);
  }

  @Test
  void bracing_tools_place_on_the_surface_pointed_at() throws Exception {
    fresh(Worktable.Shown.LOWER);
    w.press("step-BRACING");
    String[] tools = {"RECIPROCAL_ARM", "GUIDE_PLATE", "GUIDE_PLANE", "PLATING"};
    Class<?>[] kinds = {ReciprocalArm.class, GuidePlate.class, GuidePlane.class, Plating.class};
    for (int i = 0; i < tools.length; i++) {
      w.press("tool-bracing-" + tools[i]);
      w.click(44, -0.9, -0.3);
      assertThat(placed(Arch.LOWER)).as(tools[i]).hasSize(i + 1);
      assertThat(placed(Arch.LOWER).get(i)).isInstanceOf(kinds[i]);
    }
  }

  @Test
  void connector_tools_place_every_form_dam_and_relief() throws Exception {
    for (ConnectorForm form : ConnectorForm.values()) {
      boolean upper = form.arch() == Arch.UPPER;
      fresh(upper ? Worktable.Shown.UPPER : Worktable.Shown.LOWER);
      w.press("step-CONNECTORS");
      w.press("tool-connector-" + form.name());
      w.clickMidline(form.arch(), 30);
      assertThat(w.table().current().design(form.arch()).majorConnector())
          .as("%s", form)
          .hasValueSatisfying(c -> assertThat(c.form()).isEqualTo(form));
    }
    fresh(Worktable.Shown.UPPER);
    w.press("step-CONNECTORS");
    for (PostDam.Extent e : PostDam.Extent.values()) {
      w.press("tool-dam-" + e.name());
      w.clickMidline(Arch.UPPER, 30);
    }
    assertThat(w.table().current().upperDesign().all(PostDam.class)).hasSize(2);
    for (Relief.Area a : Relief.Area.values()) {
      if (a != Relief.Area.UNDER_LOWER_CONNECTOR) {
        w.press("tool-relief-" + a.name());
        w.clickMidline(Arch.UPPER, 30);
      }
    }
    assertThat(w.table().current().upperDesign().all(Relief.class)).hasSize(4);
    w.press("tool-minor");
    w.click(13, 0, -0.8);
    assertThat(w.table().current().upperDesign().all(MinorConnector.class))
        .extracting(MinorConnector::place)
        .containsExactly(MinorConnector.Place.LINGUAL_FACE);
  }

  @Test
  void every_kind_can_be_selected_by_clicking_and_removed() throws Exception {
    fresh(Worktable.Shown.UPPER);
    w.press("step-SADDLES");
    w.press("tool-saddle-COMPLETE");
    w.click(15, 0, 0);
    w.click(25, 0, 0);
    w.press("tool-saddle-TISSUE_STOP");
    w.click(15, 0, 0);
    w.press("tool-saddle-BACKING");
    w.click(24, 0, 0);
    w.press("step-RETENTION");
    w.press("tool-clasp-THREE_ARM");
    w.click(16, -0.75, 0.8);
    w.press("step-BRACING");
    w.press("tool-bracing-GUIDE_PLATE");
    w.click(13, -0.9, 0);
    w.press("tool-bracing-GUIDE_PLANE");
    w.click(13, -0.9, 0);
    w.press("tool-bracing-PLATING");
    w.click(23, 0, -0.5);
    w.press("step-CONNECTORS");
    w.press("tool-connector-PALATAL_STRAP");
    w.clickMidline(Arch.UPPER, 30);
    w.press("tool-minor");
    w.click(12, 0, -0.8);
    w.press("tool-dam-POSTERIOR_BORDER");
    w.clickMidline(Arch.UPPER, 30);
    w.press("tool-relief-MIDLINE_RAPHE");
    w.clickMidline(Arch.UPPER, 30);
    w.press("step-REVIEW");
    w.press("tool-note");
    w.click(11, 0, 1.2);
    w.press("tool-review-select");

    Set<Class<?>> kinds = new HashSet<>();
    placed(Arch.UPPER).forEach(c -> kinds.add(c.getClass()));
    assertThat(kinds).as("one of every kind but unknown").hasSize(16);

    List<String> unreachable = new ArrayList<>();
    // The last first, since a dam has no place once its connector is gone.
    List<Component> all = new ArrayList<>(placed(Arch.UPPER));
    java.util.Collections.reverse(all);
    for (Component c : all) {
      if (!w.selectByClicking(Arch.UPPER, c.id())) {
        unreachable.add(c.id().value());
        continue;
      }
      w.press("delete");
      assertThat(w.table().current().upperDesign().find(c.id())).isEmpty();
    }
    assertThat(unreachable).isEmpty();
  }
}
