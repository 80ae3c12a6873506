package saddlewright.desktop.tools;

import java.util.List;
import java.util.Optional;
import saddlewright.casefile.Assessment;
import saddlewright.chart.ArchChart;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.design.Subject;
import saddlewright.desktop.Words;

/**
 * Charts an undercut in the zone pointed at.
 *
 * @param depth in mm; empty takes the undercut away
 */
record SurveyTool(Optional<Double> depth) implements Tool {
  @Override
  public List<Proposal> proposals(Aim aim, Assessment now) {
    if (aim.tooth().isEmpty()) {
      return List.of();
    }
    Tooth tooth = aim.tooth().get();
    ArchChart chart = now.subject().chart(aim.arch());
    if (!chart.stands(tooth)) {
      return List.of();
    }
    ToothFindings old = chart.tooth(tooth);
    Optional<Undercut> before = Optional.ofNullable(old.undercuts().get(aim.zone()));
    Optional<Undercut> after = depth.map(d -> new Undercut(d, before.flatMap(Undercut::height)));
    ToothFindings next = old.withUndercut(aim.zone(), after);
    String zone = ToothNames.zone(tooth, aim.zone());
    String name =
        depth
            .map(d -> Words.of("edit.undercut", tooth, zone, Words.mm(d)))
            .orElseGet(() -> Words.of("edit.no-undercut", tooth, zone));
    return next.equals(old)
        ? List.of()
        : List.of(new Proposal(name, aim.arch(), now.subject().with(chart.with(tooth, next))));
  }

  @Override
  public Sites sites() {
    return Sites.ZONES;
  }

  @Override
  public Optional<Refusal> refusal(Aim aim, Assessment now) {
    return Reasons.lost(aim, now.subject().chart(aim.arch()))
        .or(
            () ->
                aim.tooth()
                    .map(
                        t ->
                            Refusal.there(
                                Words.of("refusal.surveyed", t, ToothNames.zone(t, aim.zone())),
                                Subject.of(t))));
  }
}
