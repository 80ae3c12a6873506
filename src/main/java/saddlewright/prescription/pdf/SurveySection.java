package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import saddlewright.casefile.order.Item;
import saddlewright.dentition.Arch;
import saddlewright.prescription.SurveyedTip;

/** The path on which the denture goes in, and the undercuts that hold it there. */
final class SurveySection implements Section {
  private static final double MM = Sheet.MM;
  private static final List<Table.Column> COLUMNS =
      List.of(
          new Table.Column("No.", 0, 9 * MM, Weight.REGULAR),
          new Table.Column("Tooth", 10 * MM, 14 * MM, Weight.BOLD),
          new Table.Column("Zone", 25 * MM, 24 * MM, Weight.REGULAR),
          new Table.Column("Charted", 50 * MM, 54 * MM, Weight.REGULAR),
          new Table.Column("Wanted", 105 * MM, 27 * MM, Weight.REGULAR),
          new Table.Column("Compared", 133 * MM, 41 * MM, Weight.REGULAR));

  private final Printout printout;

  SurveySection(Printout printout) {
    this.printout = printout;
  }

  @Override
  public void write(Flow flow) throws IOException {
    flow.heading("Survey and path of insertion");
    Fields.of(new FormFields(printout).of(Item.PATH_OF_INSERTION, Item.TRIPOD_MARKS)).write(flow);
    Map<Arch, List<SurveyedTip>> tips = new EnumMap<>(Arch.class);
    for (Arch arch : Arch.values()) {
      tips.put(arch, SurveyedTip.of(printout.assessment(), printout.schedule(), arch));
    }
    if (tips.values().stream().allMatch(List::isEmpty)) {
      flow.paragraph(
          "Undercuts for clasps: none is used, for no clasp is designed.", Flow.BODY, Shade.INK);
      return;
    }
    flow.subheading("Undercut at each clasp tip");
    Table table = new Table(flow, COLUMNS, false);
    for (Arch arch : Arch.values()) {
      if (!tips.get(arch).isEmpty()) {
        table.group(Printout.name(arch) + " arch");
      }
      for (SurveyedTip t : tips.get(arch)) {
        table.row(
            Integer.toString(t.number()),
            t.tooth(),
            t.zone(),
            t.charted(),
            t.wanted(),
            t.agreement().words());
      }
    }
    flow.gap(6);
  }
}
