package saddlewright.classification;

import java.util.List;
import java.util.Set;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;

/**
 * The Kennedy class of an arch by Applegate's rules, with the reasons for it.
 *
 * @param kennedy the class
 * @param modifications number of further edentulous areas
 * @param areas the edentulous areas in arch order
 * @param reasoning plain sentences, in the order in which the class was found
 */
public record Classification(
    Arch arch,
    KennedyClass kennedy,
    int modifications,
    List<EdentulousArea> areas,
    List<String> reasoning) {

  /**
   * Classifies an arch as it will be once planned extractions are done.
   *
   * @param abutments standing third molars that the design uses as abutments, besides those that the
   *     chart names
   */
  public static Classification of(ArchChart chart, Set<Tooth> abutments) {
    throw new UnsupportedOperationException();
  }

  /** Such as "Kennedy Class II modification 1", or why there is none. */
  public String label() {
    throw new UnsupportedOperationException();
  }
}
