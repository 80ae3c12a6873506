package saddlewright.rules.support;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import saddlewright.chart.Tilt;
import saddlewright.dentition.End;
import saddlewright.dentition.Side;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.EndSupport;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.NewRest;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.ToothList;

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
    for (AreaSupport a : AreaSupport.all(s)) {
      if (a.isBounded()) {
        weigh(s, a, on);
      }
    }
  }

  private static void weigh(Situation s, AreaSupport area, Judging on) {
    List<EndSupport> poor = new ArrayList<>();
    for (EndSupport e : area.ends()) {
      List<Rest> carrying = carrying(s, e);
      if (carrying.isEmpty()) {
        poor.add(e);
      }
      for (Rest r : carrying) {
        on.upheld(
            "supports " + Naming.of(area.saddle()) + " at its " + end(area, e) + " end",
            Subject.of(s.arch(), r));
      }
    }
    if (!poor.isEmpty()) {
      find(s, area, poor, on);
    }
  }

  /** The end of the saddle at an abutment, as one says it: mesial, distal, right or left. */
  private static String end(AreaSupport area, EndSupport e) {
    if (area.saddle().span().crossesMidline()) {
      return e.abutment().side() == Side.RIGHT ? "right" : "left";
    }
    return e.facing() == End.MESIAL ? "distal" : "mesial";
  }

  private static void find(Situation s, AreaSupport area, List<EndSupport> poor, Judging on) {
    List<EndSupport> bare = poor.stream().filter(e -> !e.isRested()).toList();
    String teeth =
        ToothList.of((bare.isEmpty() ? poor : bare).stream().map(EndSupport::abutment).toList());
    on.finding(Naming.of(area.saddle()), Subject.of(s.arch(), area.saddle()))
        .fact(
            bare.isEmpty()
                ? "the rest on " + teeth + " lies away from it"
                : "no rest on " + teeth + " beside it")
        .measured(
            (area.ends().size() - poor.size()) + " of 2 ends rested",
            "a rest facing it at each end")
        .weighing(bare.isEmpty() ? Severity.SHOULD : Severity.MUST)
        .remedy(
            poor.stream()
                .map(e -> NewRest.label(e.abutment(), e.facingSite()))
                .collect(Collectors.joining("; ")),
            new DesignEdit.Several(
                poor.stream().map(e -> NewRest.edit(s, e.abutment(), e.facingSite())).toList()))
        .done();
  }

  /** The rests that carry an end: facing the saddle, or elsewhere where there is a reason. */
  private static List<Rest> carrying(Situation s, EndSupport e) {
    if (!e.facingRests().isEmpty()) {
      return e.facingRests();
    }
    // A molar that leans towards the saddle tips further when loaded on the facing side alone.
    boolean leans =
        e.facing() == End.MESIAL
            && s.chart().tooth(e.abutment()).tilt().equals(Optional.of(Tilt.MESIAL));
    Double room = s.chart().tooth(e.abutment()).clearances().get(e.facingSite());
    boolean noRoom = room != null && room < s.profile().limit(Quantity.REST_CLEARANCE_LEAST);
    if (leans || noRoom) {
      return !e.otherRests().isEmpty() || leans ? e.otherRests() : e.nextRests();
    }
    return List.of();
  }
}
