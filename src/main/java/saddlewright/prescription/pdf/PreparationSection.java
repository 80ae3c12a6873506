package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import saddlewright.casefile.order.PreparationKind;
import saddlewright.casefile.order.PreparationMark;
import saddlewright.prescription.Dates;
import saddlewright.prescription.PreparationPlan;
import saddlewright.prescription.PreparationWarning;
import saddlewright.prescription.ToothWords;
import saddlewright.rules.Sentence;
import saddlewright.rules.Source;

/** What is done in the mouth before the master impression: a page for the chairside. */
final class PreparationSection implements Section {
  /** The subheading keeps the first of its cautions with it. */
  private static final double FIRST_CAUTION = 100;

  private static final double MM = Sheet.MM;

  private final Printout printout;
  private final PreparationPlan plan;

  PreparationSection(Printout printout) {
    this.printout = printout;
    this.plan = printout.preparations();
  }

  @Override
  public void write(Flow flow) throws IOException {
    boolean none = plan.entries().isEmpty() && plan.unknown().isEmpty();
    if (!none) {
      flow.newPage();
    }
    flow.heading("Mouth preparations");
    if (none) {
      flow.paragraph("The design asks for none.", Flow.BODY, Shade.INK);
      return;
    }
    flow.paragraph(
        "In the order in which they are done. What is cut does not grow back: agree it with the"
            + " patient first, and cut nothing before the design is signed. Each is checked, or"
            + " declined with the reason, before the master impression.",
        Flow.SMALL,
        Shade.QUIET);
    Table table =
        new Table(
            flow,
            List.of(
                new Table.Column("No.", 0, 7 * MM, Weight.REGULAR),
                new Table.Column("Tooth, surface", 8 * MM, 26 * MM, Weight.BOLD),
                new Table.Column("What to do, and why", 36 * MM, 68 * MM, Weight.REGULAR),
                Table.Column.toTick("Done", 106 * MM, 9 * MM),
                Table.Column.toTick("Chkd", 116 * MM, 9 * MM),
                Table.Column.toTick("Decl.", 126 * MM, 9 * MM),
                Table.Column.toWriteIn("Date, by, checked by, reason", 137 * MM, 37 * MM)),
            false);
    int number = 0;
    for (PreparationKind kind : PreparationKind.values()) {
      List<PreparationPlan.Entry> group = plan.of(kind);
      if (!group.isEmpty()) {
        table.group(kind.title());
      }
      for (PreparationPlan.Entry e : group) {
        row(table, e, ++number);
      }
    }
    for (PreparationMark m : plan.unknown()) {
      table.row(
          "",
          m.key(),
          "Noted for a preparation that is not known here",
          "",
          "",
          "",
          Sentence.capital(m.state().words()));
    }
    cautions(flow);
    flow.gap(3);
    flow.paragraph("Sizes after: " + sources() + ".", Flow.SMALL, Shade.QUIET);
  }

  private void row(Table table, PreparationPlan.Entry e, int number) throws IOException {
    String teeth = ToothWords.list(e.teeth(), printout.notation());
    String where =
        teeth.isEmpty() ? e.place() : e.surface().isEmpty() ? teeth : teeth + "\n" + e.surface();
    List<String> why = new ArrayList<>();
    if (!e.purpose().isBlank()) {
      why.add("For: " + e.purpose());
    }
    if (!e.warnings().isEmpty()) {
      why.add(plan.signs(e));
    }
    String what =
        Sentence.capital(e.target())
            + (e.isReworded() ? " (own words)" : "")
            + (why.isEmpty() ? "" : "\n" + String.join("; ", why));
    PreparationMark.State state = e.mark().state();
    boolean declined = state == PreparationMark.State.DECLINED;
    table.row(
        Integer.toString(number),
        where,
        what,
        e.isDone() ? "Yes" : declined ? "–" : "",
        state == PreparationMark.State.CHECKED ? "Yes" : declined ? "–" : "",
        declined ? "Yes" : e.isDone() ? "–" : "",
        noted(e));
  }

  /** What has been noted; nothing while a preparation is only planned, so that it is written in. */
  private String noted(PreparationPlan.Entry e) {
    List<String> out = new ArrayList<>();
    if (e.origin() == PreparationPlan.Origin.FORMER) {
      out.add("No longer asked for by the design");
    }
    if (e.mark().state() != PreparationMark.State.PLANNED) {
      PreparationMark m = e.mark();
      m.on().ifPresent(day -> out.add(Dates.words(day)));
      if (!m.by().isBlank()) {
        out.add("By " + m.by());
      }
      if (!m.checkedBy().isBlank()) {
        out.add("Checked by " + m.checkedBy());
      }
      out.addAll(plan.gaps(e));
    }
    if (!e.mark().note().isBlank()) {
      out.add(e.mark().note());
    }
    return String.join("\n", out);
  }

  private void cautions(Flow flow) throws IOException {
    List<PreparationWarning> all = plan.cautions();
    if (all.isEmpty()) {
      return;
    }
    flow.need(FIRST_CAUTION);
    flow.subheading("Cautions for these preparations");
    Table table =
        new Table(
            flow,
            List.of(
                new Table.Column("Sign", 0, 8 * MM, Weight.BOLD),
                new Table.Column("Caution, and who says so", 10 * MM, 164 * MM, Weight.REGULAR)),
            false);
    for (int i = 0; i < all.size(); i++) {
      table.row(
          PreparationPlan.sign(i),
          all.get(i).sentence() + " [" + Sentence.capital(all.get(i).source().words()) + "]");
    }
  }

  private String sources() {
    Set<String> words = new LinkedHashSet<>();
    plan.entries().forEach(e -> e.source().map(Source::words).ifPresent(words::add));
    return String.join("; ", words);
  }
}
