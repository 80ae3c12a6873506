package saddlewright.prescription;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;

/**
 * The component schedule as the text of an e-mail: short lines and no columns, so that it is read
 * in any type and survives being quoted.
 */
public final class ScheduleMail {
  /** Leaves room for two marks of quotation in the 78 that RFC 5322, 2.1.1, asks for. */
  static final int COLUMNS = 76;

  private static final String INDENT = "   ";

  private ScheduleMail() {}

  public static String of(Assessment assessment, Notation notation) {
    Schedule schedule = Schedule.of(assessment, notation);
    Case c = assessment.subject();
    Revision revision = Revision.of(c);
    List<String> out = new ArrayList<>();
    wrap("Component schedule of a partial denture", "", out);
    String reference = OneLine.of(c.reference());
    wrap("Case: " + (reference.isBlank() ? "without reference" : reference), "", out);
    if (!c.title().isBlank()) {
      wrap(OneLine.of(c.title()), "", out);
    }
    wrap(
        String.format(
            Locale.ROOT,
            "Revision %d, %s",
            revision.number(),
            revision.issued() ? "issued" : "not issued"),
        "",
        out);
    wrap("Fingerprint: " + revision.hash(), INDENT, out);
    wrap("Teeth numbered by " + ToothWords.name(notation) + ".", "", out);
    for (Arch arch : Arch.values()) {
      List<Schedule.Line> lines = schedule.in(arch);
      out.add("");
      out.add(arch == Arch.UPPER ? "UPPER ARCH" : "LOWER ARCH");
      if (lines.isEmpty()) {
        out.add("No components.");
      }
      for (Category category : Category.values()) {
        List<Schedule.Line> group = lines.stream().filter(l -> l.category() == category).toList();
        if (!group.isEmpty()) {
          out.add("");
          out.add(category.title() + ":");
        }
        group.forEach(l -> wrap(l.number() + ") " + l.place() + ": " + l.text(), INDENT, out));
      }
    }
    return String.join("\n", out) + "\n";
  }

  /** Breaks words into lines, all but the first set in; a word too long for a line is cut. */
  private static void wrap(String words, String indent, List<String> out) {
    StringBuilder line = new StringBuilder();
    for (String word : words.strip().split("\\s+")) {
      if (line.length() > indent.length() && line.length() + 1 + word.length() > COLUMNS) {
        out.add(line.toString());
        line = new StringBuilder(indent);
      }
      line.append(line.length() == 0 || line.toString().equals(indent) ? "" : " ").append(word);
      while (line.length() > COLUMNS) {
        out.add(line.substring(0, COLUMNS));
        line = new StringBuilder(indent).append(line.substring(COLUMNS));
      }
    }
    out.add(line.toString());
  }
}
