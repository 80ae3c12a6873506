package saddlewright.chart;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;

/** The chart of one arch: findings for each of its sixteen teeth and for its soft tissues. */
public record ArchChart(Arch arch, Map<Tooth, ToothFindings> teeth, SoftTissues softTissues) {

  public ArchChart {
    Map<Tooth, ToothFindings> full = new EnumMap<>(Tooth.class);
    for (Tooth t : Tooth.in(arch)) {
      full.put(t, teeth.getOrDefault(t, ToothFindings.STANDING));
    }
    for (Tooth t : teeth.keySet()) {
      if (t.arch() != arch) {
        throw new IllegalArgumentException(t + " is not a tooth of the " + arch.code() + " arch");
      }
    }
    for (Tooth t : softTissues.teeth()) {
      if (t.arch() != arch) {
        throw new IllegalArgumentException(
            "soft tissue beside " + t + " is not in the " + arch.code() + " arch");
      }
    }
    teeth = Collections.unmodifiableMap(full);
  }

  /** A full arch, all teeth standing and nothing else charted. */
  public static ArchChart full(Arch arch) {
    return new ArchChart(arch, Map.of(), SoftTissues.UNCHARTED);
  }

  public ToothFindings tooth(Tooth tooth) {
    ToothFindings f = teeth.get(tooth);
    if (f == null) {
      throw new IllegalArgumentException(tooth + " is not a tooth of the " + arch.code() + " arch");
    }
    return f;
  }

  public ArchChart with(Tooth tooth, ToothFindings findings) {
    Map<Tooth, ToothFindings> changed = new EnumMap<>(teeth);
    changed.put(tooth, findings);
    return new ArchChart(arch, changed, softTissues);
  }

  public ArchChart with(SoftTissues tissues) {
    return new ArchChart(arch, teeth, tissues);
  }

  /** Whether a crown, natural or on its own implant, stands there after planned extractions. */
  public boolean stands(Tooth tooth) {
    ToothFindings f = tooth(tooth);
    return f.status() == ToothStatus.STANDING
        || (f.status() == ToothStatus.IMPLANT && f.gap() == GapDecision.NOT_REPLACED);
  }

  /** Whether the place is empty (after treatment) and will get an artificial tooth. */
  public boolean isReplaced(Tooth tooth) {
    return isLost(tooth) && tooth(tooth).gap() == GapDecision.REPLACED;
  }

  /** Whether the space has been closed by drift, so that nothing lies there. */
  public boolean isClosed(Tooth tooth) {
    return isLost(tooth) && tooth(tooth).gap() == GapDecision.CLOSED;
  }

  /**
   * Whether the place is edentulous once planned extractions are done. An implant is so unless it
   * carries a crown of its own, which the chart says with {@link GapDecision#NOT_REPLACED}.
   */
  public boolean isLost(Tooth tooth) {
    return !stands(tooth);
  }

  public List<Tooth> standing() {
    return where(this::stands);
  }

  public List<Tooth> where(Predicate<Tooth> condition) {
    return Tooth.in(arch).stream().filter(condition).toList();
  }
}
