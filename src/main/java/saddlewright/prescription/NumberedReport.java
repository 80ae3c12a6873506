package saddlewright.prescription;

import java.util.ArrayList;
import java.util.List;
import saddlewright.rules.OpenQuestion;
import saddlewright.rules.Report;

/**
 * A report as it is listed on paper: what stands, then what could not be judged, then what was
 * waived, numbered through so that the drawing can refer to it.
 *
 * @param standing findings that stand
 * @param questions values that are wanting
 * @param waived findings that were accepted
 */
public record NumberedReport(
    List<Line<Report.Entry>> standing,
    List<Line<OpenQuestion>> questions,
    List<Line<Report.Entry>> waived) {

  /** A line of the list with its number, from 1. */
  public record Line<T>(int number, T what) {}

  public static NumberedReport of(Report report) {
    int n = 0;
    List<Line<Report.Entry>> standing = new ArrayList<>();
    for (Report.Entry e : report.entries()) {
      if (e.stands()) {
        standing.add(new Line<>(++n, e));
      }
    }
    List<Line<OpenQuestion>> questions = new ArrayList<>();
    for (OpenQuestion q : report.questions()) {
      questions.add(new Line<>(++n, q));
    }
    List<Line<Report.Entry>> waived = new ArrayList<>();
    for (Report.Entry e : report.entries()) {
      if (!e.stands()) {
        waived.add(new Line<>(++n, e));
      }
    }
    return new NumberedReport(List.copyOf(standing), List.copyOf(questions), List.copyOf(waived));
  }

  /** All findings, those that stand first. */
  public List<Line<Report.Entry>> entries() {
    List<Line<Report.Entry>> out = new ArrayList<>(standing);
    out.addAll(waived);
    return out;
  }
}
