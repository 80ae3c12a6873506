package saddlewright.rules.retention;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import saddlewright.chart.ChartField;
import saddlewright.chart.Condition;
import saddlewright.chart.ToothFindings;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Comparison;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;

/** A clasp pulls at its tooth whenever the denture moves; a weak tooth does not bear that. */
public final class ClaspedTeethAreSound implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "clasped-teeth-are-sound",
          "A clasped tooth is firm, has at least half its bone and no caries; a root-filled one is"
              + " clasped with caution.",
          Severity.SHOULD,
          Source.read(
              Literature.ANKARA
                  + "; teaching notes on mouth preparation; half the bone from memory"));

  private static final Comparison ROOT_FILLED =
      new Comparison("root-filled", "a vital tooth, or the filling known to be complete");

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<Clasp> loose = new ArrayList<>();
    List<Clasp> unseen = new ArrayList<>();
    for (Clasp c : StandingClasps.of(s)) {
      ToothFindings f = s.chart().tooth(c.tooth());
      List<Comparison> faults = faults(s, f);
      if (!faults.isEmpty()) {
        blame(s, on, c, faults, f.condition().equals(Optional.of(Condition.CARIOUS)));
      } else if (f.mobility().isPresent() && f.condition().isPresent()) {
        on.upheld("grips a firm, sound tooth", Subject.of(s.arch(), c));
      }
      if (f.mobility().isEmpty()) {
        loose.add(c);
      }
      if (f.condition().isEmpty()) {
        unseen.add(c);
      }
    }
    if (!loose.isEmpty()) {
      on.unanswered(ChartField.mobility(teeth(loose)), StandingClasps.subjects(s, loose));
    }
    if (!unseen.isEmpty()) {
      on.unanswered(ChartField.condition(teeth(unseen)), StandingClasps.subjects(s, unseen));
    }
  }

  private static void blame(
      Situation s, Judging on, Clasp c, List<Comparison> faults, boolean carious) {
    boolean filledOnly = faults.equals(List.of(ROOT_FILLED));
    Draft d =
        on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
            .fact("the " + Naming.of(c) + " pulls at a tooth that is not sound")
            .measured(joined(faults, Comparison::actual), joined(faults, Comparison::required))
            .weighing(filledOnly ? Severity.CONSIDER : Severity.SHOULD);
    if (!filledOnly && !carious) {
      d.remedy("Keep its rest and take the clasp away", new DesignEdit.Remove(c.id()));
    }
    d.done();
  }

  private static String joined(List<Comparison> faults, Function<Comparison, String> words) {
    return faults.stream().map(words).collect(Collectors.joining(", "));
  }

  private static List<Comparison> faults(Situation s, ToothFindings f) {
    List<Comparison> out = new ArrayList<>();
    double loosest = s.profile().limit(Quantity.CLASP_MOBILITY);
    double least = s.profile().limit(Quantity.BONE_SUPPORT);
    f.mobility()
        .filter(m -> m > loosest)
        .ifPresent(
            m ->
                out.add(
                    new Comparison(
                        "mobility grade " + m, "grade " + Math.round(loosest) + " at most")));
    f.boneSupportPercent()
        .filter(b -> b < least)
        .ifPresent(
            b ->
                out.add(
                    new Comparison(
                        Math.round(b) + " % bone", "at least " + Math.round(least) + " %")));
    if (f.condition().equals(Optional.of(Condition.CARIOUS))) {
      out.add(new Comparison("caries", "a sound or restored crown"));
    }
    if (f.condition().equals(Optional.of(Condition.ROOT_FILLED))) {
      out.add(ROOT_FILLED);
    }
    return out;
  }

  private static List<Tooth> teeth(List<Clasp> clasps) {
    return clasps.stream().map(Clasp::tooth).toList();
  }
}
