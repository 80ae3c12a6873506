package saddlewright.prescription;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import saddlewright.chart.ChartField;
import saddlewright.design.Subject;
import saddlewright.drawing.Callout;
import saddlewright.rules.Finding;
import saddlewright.rules.OpenQuestion;
import saddlewright.rules.Report;
import saddlewright.rules.Severity;

/**
 * A sign on the sheet for what the rule book has to say of one subject.
 *
 * @param callout how it is drawn
 * @param findings keys of the findings that it stands for
 * @param fields the values that are wanting here
 */
public record FindingSign(Callout callout, List<String> findings, List<ChartField> fields) {
  /** What signs have in common that are drawn as one. */
  private record Place(Subject subject, Callout.Form form, boolean answered) {}

  /** What one sign gathers. */
  private static final class Gathered {
    private final List<String> findings = new ArrayList<>();
    private final List<ChartField> fields = new ArrayList<>();
    private final List<Integer> numbers = new ArrayList<>();
  }

  public FindingSign {
    findings = List.copyOf(findings);
    fields = List.copyOf(fields);
  }

  /** Signs for the window: several of one kind beside one subject are counted. */
  public static List<FindingSign> onScreen(Report report) {
    return of(report, n -> n.size() < 2 ? "" : "×" + n.size());
  }

  /** Signs for paper, with the numbers under which {@link NumberedReport} lists them. */
  public static List<FindingSign> onPaper(Report report) {
    return of(
        report, n -> n.stream().map(i -> Integer.toString(i)).collect(Collectors.joining(",")));
  }

  /** The drawn part of the signs for paper. */
  public static List<Callout> callouts(Report report) {
    return onPaper(report).stream().map(FindingSign::callout).toList();
  }

  private static List<FindingSign> of(
      Report report, java.util.function.Function<List<Integer>, String> number) {
    Map<Place, Gathered> places = new LinkedHashMap<>();
    NumberedReport numbered = NumberedReport.of(report);
    for (NumberedReport.Line<Report.Entry> l : numbered.entries()) {
      Finding f = l.what().finding();
      Place p = new Place(f.subjects().get(0), form(f.severity()), !l.what().stands());
      Gathered g = places.computeIfAbsent(p, k -> new Gathered());
      g.findings.add(f.key());
      g.numbers.add(l.number());
    }
    for (NumberedReport.Line<OpenQuestion> l : numbered.questions()) {
      Place p = new Place(place(l.what().field()), Callout.Form.SQUARE, false);
      Gathered g = places.computeIfAbsent(p, k -> new Gathered());
      g.fields.add(l.what().field());
      g.numbers.add(l.number());
    }
    List<FindingSign> out = new ArrayList<>();
    places.forEach(
        (p, g) ->
            out.add(
                new FindingSign(
                    new Callout(
                        p.subject(),
                        p.form(),
                        p.answered(),
                        p.answered() ? "W" : p.form().letter(),
                        number.apply(g.numbers)),
                    g.findings,
                    g.fields)));
    return List.copyOf(out);
  }

  /** The middle of the teeth beside which a value is wanting, or the arch. */
  private static Subject place(ChartField field) {
    return field.teeth().isEmpty()
        ? Subject.of(field.arch())
        : Subject.of(field.teeth().get(field.teeth().size() / 2));
  }

  private static Callout.Form form(Severity severity) {
    return switch (severity) {
      case MUST -> Callout.Form.OCTAGON;
      case SHOULD -> Callout.Form.TRIANGLE;
      case CONSIDER -> Callout.Form.CIRCLE;
    };
  }
}
