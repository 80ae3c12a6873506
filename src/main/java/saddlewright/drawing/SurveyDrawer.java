package saddlewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import saddlewright.archform.PlacedTooth;
import saddlewright.chart.Condition;
import saddlewright.chart.Tilt;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Zone;
import saddlewright.design.Subject;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/** Draws what was charted of a standing tooth: undercuts, tilt, mobility and caries. */
final class SurveyDrawer {
  private static final double HALF_ARC = 13;
  private static final double ARC_OFFSET = 1.35;
  private static final double ARC_WIDTH = 0.35;
  private static final double DEPTH_INSIDE = 1.2;
  private static final double HALF_WORD = 0.75;
  private static final double SMALL_TYPE = 1.5;
  private static final String[] GRADES = {"", "I", "II", "III"};

  private final PlacedTooth tooth;
  private final ToothFindings findings;
  private final Optional<Subject> subject;

  SurveyDrawer(PlacedTooth tooth, ToothFindings findings) {
    this.tooth = tooth;
    this.findings = findings;
    this.subject = Optional.of(Subject.of(tooth.tooth()));
  }

  List<Mark> marks() {
    List<Mark> out = new ArrayList<>();
    for (Map.Entry<Zone, Undercut> e : findings.undercuts().entrySet()) {
      undercut(e.getKey(), e.getValue(), out);
    }
    findings.tilt().ifPresent(t -> arrow(t, out));
    findings
        .mobility()
        .filter(g -> g > 0)
        .ifPresent(g -> out.add(words(GRADES[g], tooth.at(0, 0.74), Ink.NOTE)));
    findings
        .condition()
        .filter(c -> c == Condition.CARIOUS)
        .ifPresent(
            c ->
                out.add(
                    new Mark.Dots(
                        Layer.SURVEY, Ink.NOTE, subject, List.of(tooth.at(-0.3, -0.25)), 0.55)));
    return out;
  }

  private void undercut(Zone zone, Undercut undercut, List<Mark> out) {
    if (undercut.depth() <= 0) {
      return;
    }
    double at = PlacedTooth.degrees(zone);
    Path arc = tooth.rim(at - HALF_ARC, at + HALF_ARC, ARC_OFFSET);
    out.add(
        new Mark.Stroke(
            Layer.SURVEY, Ink.UNDERCUT, subject, List.of(arc), false, ARC_WIDTH, List.of()));
    out.add(
        words(
            String.format(Locale.ROOT, "%.2f", undercut.depth()),
            // Inside the crown, where no clasp hides it.
            tooth.rimOut(at, -DEPTH_INSIDE - HALF_WORD * Math.abs(tooth.direction(at).x())),
            Ink.UNDERCUT));
  }

  private void arrow(Tilt tilt, List<Mark> out) {
    Vector way =
        switch (tilt) {
          case MESIAL -> tooth.mesial().times(tooth.halfWidth());
          case DISTAL -> tooth.mesial().times(-tooth.halfWidth());
          case BUCCAL -> tooth.buccal().times(tooth.halfDepth());
          case LINGUAL -> tooth.buccal().times(-tooth.halfDepth());
        };
    Point tip = tooth.centre().plus(way.times(0.72));
    Vector u = way.unit();
    Path shaft = Path.of(tooth.centre().minus(way.times(0.35)), tip.minus(u.times(0.9)));
    Outline head =
        Outline.of(
            List.of(
                tip,
                tip.minus(u.times(1.3)).plus(u.quarterTurn().times(0.5)),
                tip.minus(u.times(1.3)).minus(u.quarterTurn().times(0.5))));
    out.add(
        new Mark.Stroke(Layer.SURVEY, Ink.NOTE, subject, List.of(shaft), false, 0.25, List.of()));
    out.add(new Mark.Fill(Layer.SURVEY, Ink.NOTE, subject, List.of(head), 1));
  }

  private Mark words(String text, Point at, Ink ink) {
    return new Mark.Label(
        Layer.SURVEY, ink, subject, text, at, SMALL_TYPE, Mark.Align.MIDDLE, false);
  }
}
