package saddlewright.prescription;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import saddlewright.casefile.Assessment;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.dentition.ToothNames;
import saddlewright.design.Clasp;
import saddlewright.rules.Quantity;
import saddlewright.rules.Situation;

/**
 * What the survey says of the place where the tip of a clasp lies.
 *
 * @param number callout number of the clasp
 * @param tooth as it is numbered on the document
 * @param zone where on the tooth, such as "mesiobuccal"
 * @param charted depth that was surveyed, such as "0.25 mm, 2.0 mm above the margin"
 * @param wanted depth that the school asks for, such as "0.25 ± 0.05 mm"
 * @param agreement how the two compare
 */
public record SurveyedTip(
    int number, String tooth, String zone, String charted, String wanted, Agreement agreement) {

  /** How the charted depth compares with the wanted one. */
  public enum Agreement {
    AS_WANTED("as wanted"),
    TOO_SHALLOW("too shallow: see mouth preparations"),
    TOO_DEEP("too deep: see mouth preparations"),
    NOT_CHARTED("to be surveyed before the arm is made"),
    NO_FIGURE("the school gives no figure for this material");

    private final String words;

    Agreement(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** The tips of all clasps of an arch, in the order of the schedule. */
  public static List<SurveyedTip> of(Assessment assessment, Schedule schedule, Arch arch) {
    Situation s = assessment.arch(arch);
    List<SurveyedTip> out = new ArrayList<>();
    for (Schedule.Line l : schedule.in(arch)) {
      s.design()
          .find(l.id())
          .filter(Clasp.class::isInstance)
          .ifPresent(c -> out.add(of(s, l.number(), (Clasp) c, schedule.notation())));
    }
    return List.copyOf(out);
  }

  private static SurveyedTip of(Situation s, int number, Clasp clasp, Notation notation) {
    Optional<Undercut> charted =
        Optional.ofNullable(s.chart().tooth(clasp.tooth()).undercuts().get(clasp.tip()));
    Optional<Quantity> asked = WantedUndercut.of(clasp);
    double latitude = s.profile().limit(Quantity.UNDERCUT_LATITUDE);
    return new SurveyedTip(
        number,
        notation.format(clasp.tooth()),
        ToothNames.zone(clasp.tooth(), clasp.tip()),
        charted.map(SurveyedTip::depth).orElse("not charted"),
        asked
            .map(
                q ->
                    String.format(
                        Locale.ROOT, "%.2f\u00a0±\u00a0%.2f mm", s.profile().limit(q), latitude))
            .orElse("no figure"),
        agreement(charted, asked.map(s.profile()::limit), latitude));
  }

  private static String depth(Undercut u) {
    return u.depth() <= 0
        ? "looked for, none found"
        : Millimetres.fine(u.depth())
            + u.height().map(h -> ", " + Millimetres.of(h) + " above the margin").orElse("");
  }

  private static Agreement agreement(
      Optional<Undercut> charted, Optional<Double> wanted, double latitude) {
    if (charted.isEmpty()) {
      return Agreement.NOT_CHARTED;
    }
    double depth = charted.get().depth();
    if (depth <= 0) {
      return Agreement.TOO_SHALLOW;
    }
    if (wanted.isEmpty()) {
      return Agreement.NO_FIGURE;
    }
    if (depth < wanted.get() - latitude - 1e-9) {
      return Agreement.TOO_SHALLOW;
    }
    return depth > wanted.get() + latitude + 1e-9 ? Agreement.TOO_DEEP : Agreement.AS_WANTED;
  }
}
