package saddlewright.prescription.pdf.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Whether a printer can put pages on paper as they are, neither scaled nor cut.
 *
 * @param verdict how well it can
 * @param sentences what stands in the way and what to do; empty where nothing does
 */
public record PrintFit(Verdict verdict, List<String> sentences) {
  /** How pages come out of a printer. */
  public enum Verdict {
    /** At true scale and whole. */
    TRUE,
    /** At true scale; whether whole the printer does not say. */
    UNSURE,
    /** At true scale, with something missing at an edge. */
    CUT,
    /** The printer has no such paper and would make the pages fit another. */
    NO_PAPER
  }

  /** Less than this, in mm, is neither seen nor measured. */
  private static final double SLIGHT = 0.3;

  private static final String ELSEWHERE = "or save the PDF and print it elsewhere.";

  public PrintFit {
    sentences = List.copyOf(sentences);
  }

  /** What comes of pages on a printer. */
  public static PrintFit of(Printer printer, PageImages pages, PrintOrder order) {
    Map<PageSize, List<Integer>> byPaper = new LinkedHashMap<>();
    for (int i = order.first(); i <= order.last(); i++) {
      byPaper.computeIfAbsent(pages.sizes().get(i), p -> new ArrayList<>()).add(i);
    }
    Verdict worst = Verdict.TRUE;
    List<String> out = new ArrayList<>();
    for (var e : byPaper.entrySet()) {
      PrintFit one = of(printer, pages, e.getKey(), e.getValue());
      worst = one.verdict().compareTo(worst) > 0 ? one.verdict() : worst;
      out.addAll(one.sentences());
    }
    return new PrintFit(worst, out);
  }

  private static PrintFit of(
      Printer printer, PageImages pages, PageSize paper, List<Integer> which) {
    if (!printer.takes(paper)) {
      return new PrintFit(
          Verdict.NO_PAPER,
          List.of(
              printer.name()
                  + " has no paper of "
                  + words(paper)
                  + ", the size of "
                  + words(which)
                  + ", and would scale or cut. Choose a printer that has it, change the paper of the"
                  + " document, "
                  + ELSEWHERE));
    }
    Optional<Margins> unprinted = printer.unprinted(paper);
    if (unprinted.isEmpty()) {
      return new PrintFit(
          Verdict.UNSURE,
          List.of(
              printer.name()
                  + " does not say how near to the edge of "
                  + words(paper)
                  + " it prints. Check on the sheet that the lines at the edges are whole and that"
                  + " the bar measures 20 mm."));
    }
    List<String> out = new ArrayList<>();
    for (Margins.Edge edge : Margins.Edge.values()) {
      cut(printer, pages, which, edge, unprinted.get().at(edge)).ifPresent(out::add);
    }
    return new PrintFit(out.isEmpty() ? Verdict.TRUE : Verdict.CUT, out);
  }

  private static Optional<String> cut(
      Printer printer, PageImages pages, List<Integer> which, Margins.Edge edge, double unprinted) {
    List<Integer> cut = new ArrayList<>();
    double nearest = unprinted - SLIGHT;
    for (int page : which) {
      double blank = pages.blank(page).at(edge);
      if (blank < unprinted - SLIGHT) {
        cut.add(page);
        nearest = Math.min(nearest, blank);
      }
    }
    if (cut.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        printer.name()
            + " leaves "
            + mm(unprinted)
            + " blank at the "
            + edge.word()
            + " edge, and "
            + words(cut)
            + (cut.size() == 1 ? " is" : " are")
            + " printed up to "
            + mm(nearest)
            + " from it: "
            + mm(unprinted - nearest)
            + " would be cut off. Choose a printer with narrower margins, "
            + ELSEWHERE);
  }

  /** Pages in words, such as "pages 1 to 3 and 5". */
  private static String words(List<Integer> pages) {
    List<String> runs = new ArrayList<>();
    for (int i = 0; i < pages.size(); ) {
      int j = i;
      while (j + 1 < pages.size() && pages.get(j + 1) == pages.get(j) + 1) {
        j++;
      }
      String from = String.valueOf(pages.get(i) + 1);
      String to = String.valueOf(pages.get(j) + 1);
      runs.add(i == j ? from : from + (j == i + 1 ? " and " : " to ") + to);
      i = j + 1;
    }
    return (pages.size() == 1 ? "page " : "pages ") + String.join(", ", runs);
  }

  private static String words(PageSize paper) {
    return String.format(Locale.ROOT, "%.0f × %.0f mm", paper.width(), paper.height());
  }

  private static String mm(double value) {
    return String.format(Locale.ROOT, "%.1f mm", value);
  }
}
