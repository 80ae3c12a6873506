package saddlewright.classification;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;

/** An arch in few words, for tests. */
record Mouths(ArchChart chart) {

  static Mouths upper() {
    return new Mouths(ArchChart.full(Arch.UPPER));
  }

  static Mouths lower() {
    return new Mouths(ArchChart.full(Arch.LOWER));
  }

  Mouths missing(int... teeth) {
    return with(ToothStatus.MISSING, GapDecision.REPLACED, teeth);
  }

  Mouths notReplaced(int... teeth) {
    return with(ToothStatus.MISSING, GapDecision.NOT_REPLACED, teeth);
  }

  Mouths closed(int... teeth) {
    return with(ToothStatus.MISSING, GapDecision.CLOSED, teeth);
  }

  Mouths with(ToothStatus status, GapDecision gap, int... teeth) {
    ArchChart changed = chart;
    for (int tooth : teeth) {
      changed = changed.with(Tooth.of(tooth), ToothFindings.of(status, gap));
    }
    return new Mouths(changed);
  }

  /** All teeth missing and replaced but these. */
  static Mouths only(Arch arch, int... standing) {
    Mouths mouth = new Mouths(ArchChart.full(arch));
    for (Tooth tooth : Tooth.in(arch)) {
      if (Arrays.stream(standing).noneMatch(s -> s == tooth.fdi())) {
        mouth = mouth.missing(tooth.fdi());
      }
    }
    return mouth;
  }

  Classification classified(int... abutments) {
    Set<Tooth> used = Arrays.stream(abutments).mapToObj(Tooth::of).collect(Collectors.toSet());
    return Classification.of(chart, used);
  }

  String label(int... abutments) {
    return classified(abutments).label();
  }
}
