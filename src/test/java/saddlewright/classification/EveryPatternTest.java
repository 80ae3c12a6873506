package saddlewright.classification;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;

/** Every pattern of lost teeth against the naive classifier. */
class EveryPatternTest {
  private static final int VARIATIONS = 4;

  /** Makes one chart and, in the words of the naive classifier, the same arch once more. */
  private static final class Mouth {
    final Map<Tooth, ToothFindings> findings = new EnumMap<>(Tooth.class);
    final Set<Tooth> usedByDesign = EnumSet.noneOf(Tooth.class);
    final Set<String> lost = new HashSet<>();
    final Set<String> notReplaced = new HashSet<>();
    final Set<String> abutments = new HashSet<>();
    final Set<String> closed = new HashSet<>();

    Mouth(Arch arch, int lostPlaces, Random random) {
      boolean plain = random == null;
      for (Tooth tooth : Tooth.in(arch)) {
        if ((lostPlaces & 1 << tooth.place()) != 0) {
          lose(tooth, plain ? 0 : random.nextInt(10), plain ? 9 : random.nextInt(10));
        } else if (!plain) {
          keep(tooth, random.nextInt(8));
        }
      }
    }

    private void lose(Tooth tooth, int decision, int how) {
      String name = tooth.toString();
      lost.add(name);
      GapDecision gap = GapDecision.REPLACED;
      if (decision >= 9) {
        gap = GapDecision.CLOSED;
        closed.add(name);
      } else if (decision >= 6) {
        gap = GapDecision.NOT_REPLACED;
        notReplaced.add(name);
      }
      ToothStatus status =
          switch (how) {
            case 0, 1 -> ToothStatus.TO_BE_EXTRACTED;
            case 2 -> ToothStatus.RETAINED_ROOT;
            case 3 -> ToothStatus.UNERUPTED;
            case 4 -> gap == GapDecision.NOT_REPLACED ? ToothStatus.MISSING : ToothStatus.IMPLANT;
            default -> ToothStatus.MISSING;
          };
      findings.put(tooth, ToothFindings.of(status, gap).withAbutment(how == 5));
    }

    private void keep(Tooth tooth, int how) {
      if (how == 0) {
        // An implant with a crown of its own stands like a tooth.
        findings.put(tooth, ToothFindings.of(ToothStatus.IMPLANT, GapDecision.NOT_REPLACED));
      } else if (how < 3) {
        findings.put(tooth, ToothFindings.STANDING.withAbutment(true));
        abutments.add(tooth.toString());
      } else if (how < 5) {
        usedByDesign.add(tooth);
        abutments.add(tooth.toString());
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Arch.class)
  void agrees_with_a_naive_classifier_on_all_65536_patterns(Arch arch) {
    Random random = new Random(20_482);
    List<String> differences = new ArrayList<>();
    Map<KennedyClass, Integer> seen = new EnumMap<>(KennedyClass.class);
    for (int lost = 0; lost <= 0xFFFF; lost++) {
      for (int variation = 0; variation < VARIATIONS; variation++) {
        Mouth mouth = new Mouth(arch, lost, variation == 0 ? null : random);
        String expected =
            NaiveClassifier.classify(
                arch.code(), mouth.lost, mouth.notReplaced, mouth.abutments, mouth.closed);
        Classification found =
            Classification.of(
                new ArchChart(arch, mouth.findings, SoftTissues.UNCHARTED), mouth.usedByDesign);
        seen.merge(found.kennedy(), 1, Integer::sum);
        if (!inWords(found).equals(expected)) {
          differences.add(
              mouth.lost
                  + " not replaced "
                  + mouth.notReplaced
                  + " abutments "
                  + mouth.abutments
                  + " closed "
                  + mouth.closed
                  + ": "
                  + inWords(found)
                  + " but naively "
                  + expected);
        }
      }
    }
    assertThat(differences.stream().limit(5)).isEmpty();
    assertThat(seen).containsOnlyKeys(KennedyClass.values());
  }

  private static String inWords(Classification found) {
    List<String> areas = new ArrayList<>();
    for (EdentulousArea area : found.areas()) {
      areas.add(
          area.span().first()
              + "-"
              + area.span().last()
              + area.replaced()
              + (area.freeEnd() ? "free" : "bounded")
              + (area.crossesMidline() ? " crosses" : ""));
    }
    return found.kennedy().word() + " " + found.modifications() + " " + areas;
  }
}
