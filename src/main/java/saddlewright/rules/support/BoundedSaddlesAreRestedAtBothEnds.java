package saddlewright.rules.support;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import saddlewright.chart.Tilt;
import saddlewright.dentition.End;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.EndSupport;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.NewRest;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A saddle between two teeth is carried by a rest on each, beside it. */
public final class BoundedSaddlesAreRestedAtBothEnds implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "bounded-saddles-are-rested-at-both-ends",
          "A bounded saddle has a rest on the abutment at each end, on the surface that faces it.",
          Severity.MUST,
          Source.read(Literature.ANKARA + "; " + Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    return AreaSupport.all(s).stream()
        .filter(AreaSupport::isBounded)
        .flatMap(a -> judge(s, a).stream())
        .toList();
  }

  private Optional<Finding> judge(Situation s, AreaSupport area) {
    List<EndSupport> poor = area.ends().stream().filter(e -> !isCarried(s, e)).toList();
    if (poor.isEmpty()) {
      return Optional.empty();
    }
    boolean bare = poor.stream().anyMatch(e -> !e.isRested());
    List<EndSupport> meant = bare ? poor.stream().filter(e -> !e.isRested()).toList() : poor;
    String teeth =
        meant.stream().map(e -> e.abutment().toString()).collect(Collectors.joining(" and "));
    int carried = area.ends().size() - poor.size();
    Draft d =
        finding(Naming.of(area.saddle()), Subject.of(s.arch(), area.saddle()))
            .fact(
                bare
                    ? "no rest on " + teeth + " beside it"
                    : "the rest on " + teeth + " lies away from it")
            .measured(carried + " of 2 ends rested", "a rest facing it at each end")
            .weighing(bare ? Severity.MUST : Severity.SHOULD);
    remedy(s, poor).ifPresent(e -> d.remedy(label(poor), e));
    return Optional.of(d.done());
  }

  private static boolean isCarried(Situation s, EndSupport e) {
    if (!e.facingRests().isEmpty()) {
      return true;
    }
    // A molar that leans towards the saddle tips further when loaded on the facing side alone.
    boolean leans =
        e.facing() == End.MESIAL
            && s.chart().tooth(e.abutment()).tilt().equals(Optional.of(Tilt.MESIAL));
    if (leans && !e.otherRests().isEmpty()) {
      return true;
    }
    Double room = s.chart().tooth(e.abutment()).clearances().get(e.facingSite());
    boolean noRoom = room != null && room < s.profile().limit(Quantity.REST_CLEARANCE_LEAST);
    return noRoom && (e.isRested() || !e.nextRests().isEmpty());
  }

  private static Optional<DesignEdit> remedy(Situation s, List<EndSupport> poor) {
    List<DesignEdit> edits =
        poor.stream().map(e -> NewRest.edit(s, e.abutment(), e.facingSite())).toList();
    return edits.isEmpty() ? Optional.empty() : Optional.of(new DesignEdit.Several(edits));
  }

  private static String label(List<EndSupport> poor) {
    return poor.stream()
        .map(e -> NewRest.label(e.abutment(), e.facingSite()))
        .collect(Collectors.joining("; "));
  }
}
