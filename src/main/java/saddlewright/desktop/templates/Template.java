package saddlewright.desktop.templates;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import saddlewright.casefile.Case;
import saddlewright.chart.ArchChart;
import saddlewright.classification.Classification;
import saddlewright.classification.KennedyClass;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;

/**
 * A design to begin from.
 *
 * @param subject the case that it is, under its name and with what the design is in its story
 * @param source where the design comes from; empty for the user's own
 * @param file where it is kept, if it is the user's own
 */
public record Template(Case subject, String source, Optional<Path> file) {
  public String name() {
    return subject.title();
  }

  public boolean isOwn() {
    return file.isPresent();
  }

  /** The arches that are designed. */
  public List<Arch> arches() {
    List<Arch> designed =
        Stream.of(Arch.values()).filter(a -> !subject.design(a).components().isEmpty()).toList();
    return designed.isEmpty()
        ? Stream.of(Arch.values()).filter(a -> !subject.chart(a).equals(ArchChart.full(a))).toList()
        : designed;
  }

  public Classification classification(Arch arch) {
    return Classification.of(
        subject.chart(arch),
        Tooth.in(arch).stream()
            .filter(subject.design(arch)::usesAsAbutment)
            .collect(Collectors.toSet()));
  }

  /** The classes of its arches in words, such as "lower Kennedy Class I". */
  String classes() {
    return arches().stream()
        .map(a -> a.code() + " " + classification(a).label())
        .collect(Collectors.joining("; "));
  }

  /** Whether one of its arches is this and of this class; empty stands for any. */
  boolean fits(Optional<Arch> arch, Optional<KennedyClass> kennedy) {
    return arches().stream()
            .filter(a -> arch.isEmpty() || arch.get() == a)
            .anyMatch(a -> kennedy.isEmpty() || classification(a).kennedy() == kennedy.get())
        || arch.isEmpty() && kennedy.isEmpty();
  }

  /**
   * The case that begins with it, under a fresh reference.
   *
   * @param surveyed with the survey for which it was designed, which is that of no patient
   */
  public Case begin(boolean surveyed) {
    return surveyed ? Beginning.of(subject) : Beginning.unsurveyed(subject);
  }
}
