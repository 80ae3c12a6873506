package saddlewright.desktop.prescription;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.Completeness;
import saddlewright.prescription.Completeness.Gap;
import saddlewright.prescription.FormField;
import saddlewright.prescription.Level;

/** The way from gap to gap: first what must be filled in, then what should be, round and round. */
public final class GapTrail {
  private final Worktable table;
  private Optional<FormField> at = Optional.empty();

  public GapTrail(Worktable table) {
    this.table = table;
  }

  /** Notes in which field one is. */
  void at(FormField field) {
    at = Optional.of(field);
  }

  /** Starts before the first gap. */
  void begin() {
    at = Optional.empty();
  }

  /** Goes to the next gap. */
  public void onwards() {
    go(false);
  }

  /** Goes to the gap before. */
  public void back() {
    go(true);
  }

  /** The gaps in the order of the trail: as the form is read, but what must be filled in first. */
  static List<Gap> gaps(Completeness now) {
    List<Gap> out = new ArrayList<>();
    for (Level level : List.of(Level.MUST, Level.SHOULD)) {
      // Sorting keeps the order of the table within a section.
      now.gaps(level).stream()
          .sorted(Comparator.comparing(g -> g.field().section()))
          .forEach(out::add);
    }
    return out;
  }

  private void go(boolean backwards) {
    PrescriptionDetails p = table.current().prescription();
    Comparator<FormField> reading =
        Comparator.<FormField, Level>comparing(f -> f.level(p))
            .thenComparing(FormField::section)
            .thenComparing(FormField.ALL::indexOf);
    Comparator<FormField> order = backwards ? reading.reversed() : reading;
    List<FormField> fields =
        gaps(table.completeness()).stream().map(Gap::field).distinct().sorted(order).toList();
    if (fields.isEmpty()) {
      return;
    }
    FormField next =
        at.flatMap(from -> fields.stream().filter(f -> order.compare(f, from) > 0).findFirst())
            .orElse(fields.get(0));
    at(next);
    table.goTo(next);
  }
}
