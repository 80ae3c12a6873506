package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;

/**
 * Demo cases are drawn again from nothing by pointer, and the count of their actions is printed:
 * three of them, or all with {@code -Dsaddlewright.all-demos=true}.
 */
class DemoCasesByPointerTest {
  private static final ComponentId ANY = ComponentId.of("x-1");

  private static final List<String> SOME =
      List.of("02-lower-class-2-tilted-molar", "04-upper-class-4", "07-upper-class-3-drifted");

  /** All but that of the components where none can stand, which no click places. */
  private static final List<String> ALL =
      List.of(
          "01-lower-class-1-rpi",
          "02-lower-class-2-tilted-molar",
          "03-both-arches",
          "04-upper-class-4",
          "05-upper-class-1-immediate",
          "06-lower-class-3-third-molar",
          "07-upper-class-3-drifted",
          "08-lower-class-1-shallow-sulcus",
          "09-upper-class-2-torus",
          "10-fault-lower-class-2",
          "11-fault-one-sided");

  static List<String> demos() {
    return Boolean.getBoolean("saddlewright.all-demos") ? ALL : SOME;
  }

  @ParameterizedTest
  @MethodSource("demos")
  void the_design_is_the_same(String name, @TempDir Path settings) throws Exception {
    Case target = CaseStore.load(Path.of("demo-cases", name + ".json"));
    try (OnStage w = OnStage.open(settings)) {
      w.press("welcome-new");
      Redrawing r = new Redrawing(w, target);
      r.draw();
      System.out.println(name + ": " + r.actions() + " actions of the pointer and keys");
      assertThat(r.left()).isEmpty();
      for (Arch arch : Arch.values()) {
        assertThat(bare(w.table().current(), arch))
            .containsExactlyInAnyOrderElementsOf(bare(target, arch));
        assertThat(w.table().assessment().arch(arch).classification().label())
            .isEqualTo(
                saddlewright.casefile.Assessment.of(target).arch(arch).classification().label());
      }
    }
  }

  private static List<Component> bare(Case c, Arch arch) {
    return c.design(arch).components().stream().map(x -> x.withId(ANY)).toList();
  }
}
