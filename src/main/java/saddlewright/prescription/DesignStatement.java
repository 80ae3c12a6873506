package saddlewright.prescription;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import saddlewright.chart.GapDecision;
import saddlewright.dentition.Notation;
import saddlewright.dentition.Tooth;
import saddlewright.rules.Situation;

/**
 * What a design has of one of the variables by which audits score it (see {@link AuditedVariable}):
 * saddles, support, retention and connectors. It is given for every arch with a denture, and where
 * there is none, that is said with the reason.
 *
 * @param category the variable
 * @param lines what the schedule has of it
 * @param none why there is none; empty when there is
 */
public record DesignStatement(Category category, List<Schedule.Line> lines, String none) {
  public static final List<Category> AUDITED =
      List.of(Category.SADDLES, Category.SUPPORT, Category.RETENTION, Category.CONNECTORS);

  public DesignStatement {
    lines = List.copyOf(lines);
  }

  /** The four variables of one arch. */
  public static List<DesignStatement> of(Situation situation, Schedule schedule) {
    List<DesignStatement> out = new ArrayList<>();
    for (Category category : AUDITED) {
      List<Schedule.Line> lines =
          schedule.in(situation.arch()).stream().filter(l -> l.category() == category).toList();
      out.add(
          new DesignStatement(
              category,
              lines,
              lines.isEmpty() ? why(category, situation, schedule.notation()) : ""));
    }
    return List.copyOf(out);
  }

  /** Such as "15–14, 24–25 (nos. 1–6)", or "none: no tooth of this arch is missing". */
  public String words() {
    return lines.isEmpty()
        ? "none: " + none
        : lines.stream().map(Schedule.Line::place).distinct().collect(Collectors.joining(", "))
            + " ("
            + numbers()
            + ")";
  }

  /** Such as "nos. 1–3, 7". */
  private String numbers() {
    List<String> runs = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= lines.size(); i++) {
      if (i == lines.size() || lines.get(i).number() != lines.get(i - 1).number() + 1) {
        int first = lines.get(from).number();
        int last = lines.get(i - 1).number();
        runs.add(first == last ? Integer.toString(first) : first + "–" + last);
        from = i;
      }
    }
    return (lines.size() == 1 ? "no. " : "nos. ") + String.join(", ", runs);
  }

  private static String why(Category category, Situation situation, Notation notation) {
    if (situation.design().components().isEmpty()) {
      return "no denture for this arch";
    }
    return switch (category) {
      case SADDLES -> whyNoSaddle(situation, notation);
      case SUPPORT -> whyNoSupport(situation);
      case RETENTION -> "no clasp is designed; the denture is held by its fit alone";
      default -> "no major connector is designed; the parts are not joined";
    };
  }

  private static String whyNoSaddle(Situation situation, Notation notation) {
    List<Tooth> lost = situation.chart().where(situation.chart()::isLost);
    List<Tooth> replaced = situation.chart().where(situation.chart()::isReplaced);
    if (lost.isEmpty()) {
      return "no tooth of this arch is missing";
    }
    if (replaced.isEmpty()) {
      boolean closed =
          lost.stream().allMatch(t -> situation.chart().tooth(t).gap() == GapDecision.CLOSED);
      return closed ? "the gaps have closed" : "no missing tooth of this arch is to be replaced";
    }
    return "no saddle is designed, though "
        + replaced.stream().map(notation::format).collect(Collectors.joining(", "))
        + (replaced.size() == 1 ? " is" : " are")
        + " to be replaced";
  }

  private static String whyNoSupport(Situation situation) {
    boolean onTeethElsewhere =
        !situation.design().stream(saddlewright.design.Rest.class).toList().isEmpty();
    return onTeethElsewhere
        ? "the only rests are indirect retainers; the saddles are borne by the mucosa"
        : "no rest is designed; the denture is borne by the mucosa alone";
  }
}
