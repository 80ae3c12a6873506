package saddlewright.prescription;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import saddlewright.casefile.Assessment;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.dentition.Tooth;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.rules.Situation;

/**
 * The component schedule: every component of a design by tooth, in the trade's words and order.
 *
 * <p>It is made from the same model and the same layout as the drawing. Each component has exactly
 * one line; those that this version does not know are listed as unknown.
 *
 * @param notation how its teeth are numbered
 * @param lines in reading order: upper arch first, then by {@link Category}, then by tooth
 */
public record Schedule(Notation notation, List<Line> lines) {

  /**
   * One component in words.
   *
   * @param number callout number on the sheet, counted from 1 through both arches
   * @param arch the arch that it belongs to
   * @param id the component
   * @param category its group
   * @param teeth the positions it stands on; empty for what belongs to the arch as a whole
   * @param place the same in words, such as "36–37", or "arch"
   * @param text what it is, a sentence or two on one line
   */
  public record Line(
      int number,
      Arch arch,
      ComponentId id,
      Category category,
      List<Tooth> teeth,
      String place,
      String text) {
    public Line {
      teeth = List.copyOf(teeth);
    }
  }

  /** What stands in place of teeth for a component of the arch as a whole. */
  static final String WHOLE_ARCH = "arch";

  public Schedule {
    lines = List.copyOf(lines);
  }

  /** The schedule of one arch, numbered from 1. */
  public static Schedule of(Situation situation, Notation notation) {
    return new Schedule(notation, lines(situation, notation, 1));
  }

  /** The schedule of both arches, numbered through. */
  public static Schedule of(Assessment assessment, Notation notation) {
    List<Line> all = new ArrayList<>(lines(assessment.upper(), notation, 1));
    all.addAll(lines(assessment.lower(), notation, all.size() + 1));
    return new Schedule(notation, all);
  }

  private static List<Line> lines(Situation situation, Notation notation, int first) {
    ComponentWords words = new ComponentWords(situation, notation);
    List<Line> out = new ArrayList<>();
    for (Component c : ComponentNumbers.inOrder(situation.design())) {
      out.add(
          new Line(
              first + out.size(),
              situation.arch(),
              c.id(),
              c.accept(ComponentPlace.FINDER).category(),
              c.teeth(),
              place(c, notation),
              OneLine.of(c.accept(words))));
    }
    return out;
  }

  private static String place(Component c, Notation notation) {
    List<Tooth> t = c.teeth();
    return t.isEmpty() ? WHOLE_ARCH : ToothWords.range(t.get(0), t.get(t.size() - 1), notation);
  }

  /** The lines of one arch. */
  public List<Line> in(Arch arch) {
    return lines.stream().filter(l -> l.arch() == arch).toList();
  }

  /** The line of a component of an arch; none when the design has no such component. */
  public java.util.Optional<Line> find(Arch arch, ComponentId id) {
    return in(arch).stream().filter(l -> l.id().equals(id)).findFirst();
  }

  /**
   * The schedule as plain text: for each arch its groups and one line a component with number,
   * teeth and words; the same for the same design, byte for byte.
   */
  public String toText() {
    StringBuilder out = new StringBuilder();
    out.append("Teeth numbered by ").append(ToothWords.name(notation)).append(".\n");
    int width = lines.stream().mapToInt(l -> l.place().length()).max().orElse(0);
    for (Arch arch : Arch.values()) {
      out.append('\n').append(arch == Arch.UPPER ? "UPPER ARCH\n" : "LOWER ARCH\n");
      if (in(arch).isEmpty()) {
        out.append("No components.\n");
      }
      for (Category category : Category.values()) {
        List<Line> group = in(arch).stream().filter(l -> l.category() == category).toList();
        if (!group.isEmpty()) {
          out.append(category.title()).append('\n');
        }
        for (Line l : group) {
          String row =
              String.format(
                  Locale.ROOT,
                  "%4d  %-" + Math.max(1, width) + "s  %s",
                  l.number(),
                  l.place(),
                  l.text());
          out.append(row.stripTrailing()).append('\n');
        }
      }
    }
    return out.toString();
  }
}
