package saddlewright.desktop.tools;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import saddlewright.casefile.Assessment;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;
import saddlewright.desktop.Words;

/**
 * Charts the state of the tooth pointed at.
 *
 * @param status state that a click gives
 * @param gap what becomes of the place; empty keeps what is charted
 */
record ChartTool(ToothStatus status, Optional<GapDecision> gap) implements Tool {
  @Override
  public List<Proposal> proposals(Aim aim, Assessment now) {
    if (!aim.inside()) {
      return List.of();
    }
    Tooth tooth = aim.tooth().orElseThrow();
    ArchChart chart = now.subject().chart(aim.arch());
    ToothFindings old = chart.tooth(tooth);
    ToothFindings next = old.withStatus(status).withGap(gap.orElse(old.gap()));
    return next.equals(old)
        ? List.of()
        : List.of(
            new Proposal(
                Words.of("edit.chart", tooth, words()),
                aim.arch(),
                now.subject().with(chart.with(tooth, next))));
  }

  private String words() {
    boolean lost = status != ToothStatus.STANDING && status != ToothStatus.IMPLANT;
    return gap.filter(g -> lost)
        .map(g -> Words.of("edit.state", Words.of(status), Words.of(g).toLowerCase(Locale.ROOT)))
        .orElseGet(() -> Words.of(status));
  }

  @Override
  public Optional<Refusal> refusal(Aim aim, Assessment now) {
    return aim.inside()
        ? Optional.of(
            Refusal.there(
                Words.of("refusal.charted", aim.tooth().orElseThrow()),
                Subject.of(aim.tooth().orElseThrow())))
        : Optional.empty();
  }

  @Override
  public boolean isDragged() {
    return true;
  }
}
