package saddlewright.prescription;

import java.util.Collection;
import saddlewright.casefile.Assessment;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;

/** The words that stand for a drawing to those who cannot see it: what the schedule says of it. */
public final class PictureWords {
  private PictureWords() {}

  /** The components of the arches that a drawing shows, with the class of each arch. */
  public static String of(Assessment assessment, Notation notation, Collection<Arch> shown) {
    Schedule schedule = Schedule.of(assessment, notation);
    StringBuilder out =
        new StringBuilder("Drawing of the design at true scale, seen from the occlusal side.");
    for (Arch arch : Arch.values()) {
      if (!shown.contains(arch)) {
        continue;
      }
      out.append(arch == Arch.UPPER ? " Upper arch: " : " Lower arch: ")
          .append(assessment.arch(arch).classification().label())
          .append('.');
      if (schedule.in(arch).isEmpty()) {
        out.append(" No components.");
      }
      for (Category category : Category.values()) {
        String before = " " + category.title() + ":";
        for (Schedule.Line l : schedule.in(arch)) {
          if (l.category() == category) {
            out.append(before)
                .append(" no. ")
                .append(l.number())
                .append(", ")
                .append(l.place())
                .append(", ")
                .append(l.text())
                .append(l.text().endsWith(".") ? "" : ".");
            before = "";
          }
        }
      }
    }
    return out.toString();
  }
}
