package saddlewright.classification;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;

/**
 * The Kennedy class of an arch by Applegate's rules, with the reasons for it.
 *
 * @param kennedy the class
 * @param modifications number of further edentulous areas
 * @param areas the edentulous areas in arch order; none in an edentulous arch, which has no class
 * @param reasoning plain sentences, in the order in which the class was found
 */
public record Classification(
    Arch arch,
    KennedyClass kennedy,
    int modifications,
    List<EdentulousArea> areas,
    List<String> reasoning) {

  public Classification {
    areas = List.copyOf(areas);
    reasoning = List.copyOf(reasoning);
  }

  /**
   * Classifies an arch as it will be once planned extractions are done.
   *
   * @param abutments standing third molars that the design uses as abutments, besides those that
   *     the chart names; other teeth in it have no effect
   */
  public static Classification of(ArchChart chart, Set<Tooth> abutments) {
    ArchPattern pattern = ArchPattern.of(chart, abutments);
    KennedyVerdict verdict = pattern.verdict();
    List<EdentulousArea> areas =
        verdict.kennedy().isClass() ? areas(chart.arch(), pattern) : List.of();
    return new Classification(
        chart.arch(),
        verdict.kennedy(),
        verdict.modifications(),
        areas,
        new Reasoning(chart, pattern, verdict, areas).sentences());
  }

  /** Such as "Kennedy Class II modification 1", or why there is none. */
  public String label() {
    return new KennedyVerdict(kennedy, modifications).label();
  }

  /** The area in which a place lies; empty where a tooth stands or nothing nearby is replaced. */
  public Optional<EdentulousArea> areaAt(Tooth place) {
    for (EdentulousArea area : areas) {
      if (area.span().contains(place)) {
        return Optional.of(area);
      }
    }
    return Optional.empty();
  }

  private static List<EdentulousArea> areas(Arch arch, ArchPattern pattern) {
    List<EdentulousArea> areas = new ArrayList<>(4);
    int counted = pattern.counted();
    for (int from = 0; from < ArchPattern.PLACES; ) {
      int to = ArchPattern.nextCounted(counted, from);
      int stretch = ArchPattern.places(from, to);
      int replaced = pattern.toReplace() & stretch;
      if (replaced != 0) {
        int lost = pattern.gaps() & stretch;
        areas.add(
            new EdentulousArea(
                ArchPattern.span(arch, withoutDroppedMolars(lost, replaced, from, to)),
                teeth(arch, replaced),
                from == 0 || to == ArchPattern.PLACES,
                ArchPattern.crossesMidline(lost)));
      }
      from = to + 1;
    }
    return areas;
  }

  /** The run without the third and second molars at its free ends that are not replaced. */
  private static int withoutDroppedMolars(int lost, int replaced, int from, int to) {
    int run = lost;
    if (from == 0) {
      run = drop(run, replaced, 0b01);
      run = (run & 0b01) == 0 ? drop(run, replaced, 0b10) : run;
    }
    if (to == ArchPattern.PLACES) {
      run = drop(run, replaced, 0x8000);
      run = (run & 0x8000) == 0 ? drop(run, replaced, 0x4000) : run;
    }
    return run;
  }

  private static int drop(int run, int replaced, int place) {
    return (replaced & place) == 0 ? run & ~place : run;
  }

  static List<Tooth> teeth(Arch arch, int places) {
    List<Tooth> teeth = new ArrayList<>(Integer.bitCount(places));
    for (int rest = places; rest != 0; rest &= rest - 1) {
      teeth.add(Tooth.at(arch, Integer.numberOfTrailingZeros(rest)));
    }
    return teeth;
  }
}
