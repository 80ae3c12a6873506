package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import saddlewright.casefile.order.PreparationKind;
import saddlewright.prescription.MouthPreparations;
import saddlewright.prescription.Preparation;
import saddlewright.prescription.ToothWords;
import saddlewright.rules.Sentence;

/** What is done in the mouth before the master impression. */
final class PreparationSection implements Section {
  private static final double MM = Sheet.MM;

  private final Printout printout;

  PreparationSection(Printout printout) {
    this.printout = printout;
  }

  @Override
  public void write(Flow flow) throws IOException {
    List<Preparation> all = MouthPreparations.of(printout.assessment());
    flow.heading("Mouth preparations before the master impression");
    if (all.isEmpty()) {
      flow.paragraph("The design asks for none.", Flow.BODY, Shade.INK);
      return;
    }
    flow.paragraph(
        "In clinical order. Sizes are teaching figures; enamel may be thin. What is cut does not"
            + " grow back: agree it with the patient first.",
        Flow.SMALL,
        Shade.QUIET);
    Table table =
        new Table(
            flow,
            List.of(
                new Table.Column("Tooth", 6 * MM, 18 * MM, Weight.BOLD),
                new Table.Column("Surface", 26 * MM, 25 * MM, Weight.REGULAR),
                new Table.Column("What to do", 52 * MM, 86 * MM, Weight.REGULAR),
                new Table.Column("For", 140 * MM, 34 * MM, Weight.REGULAR)),
            true);
    for (PreparationKind kind : PreparationKind.values()) {
      List<Preparation> group = all.stream().filter(p -> p.kind() == kind).toList();
      if (!group.isEmpty()) {
        table.group(kind.title());
      }
      for (Preparation p : group) {
        table.row(
            ToothWords.list(p.teeth(), printout.notation()),
            p.surface(),
            Sentence.capital(p.target()),
            reason(p));
      }
    }
    flow.gap(3);
    flow.paragraph("Sizes after: " + sources(all) + ".", Flow.SMALL, Shade.QUIET);
  }

  private String reason(Preparation p) {
    String numbers =
        p.components().stream()
            .flatMap(id -> printout.schedule().find(p.arch(), id).stream())
            .map(l -> "no. " + l.number())
            .collect(Collectors.joining(", "));
    return Sentence.capital(p.reason()) + (numbers.isEmpty() ? "" : " (" + numbers + ")");
  }

  private static String sources(List<Preparation> all) {
    Map<String, String> words = new LinkedHashMap<>();
    for (Preparation p : all) {
      words.put(p.source().citation(), p.source().evidence().words());
    }
    return words.entrySet().stream()
        .map(e -> e.getKey() + " (" + e.getValue() + ")")
        .collect(Collectors.joining("; "));
  }
}
