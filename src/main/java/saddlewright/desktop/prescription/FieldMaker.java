package saddlewright.desktop.prescription;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import saddlewright.casefile.Case;
import saddlewright.casefile.order.Item;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.desktop.Step;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.Dates;
import saddlewright.prescription.FormField;
import saddlewright.prescription.KeepUntil;
import saddlewright.prescription.Revision;
import saddlewright.prescription.ToothStates;
import saddlewright.prescription.ToothWords;
import saddlewright.rules.Report;
import saddlewright.rules.Severity;

/** Makes for each field of the table the block that shows it. */
final class FieldMaker {
  private final Worktable table;
  private final PatientShown patient;
  private final LastDays last;

  FieldMaker(Worktable table, PatientShown patient, LastDays last) {
    this.table = table;
    this.patient = patient;
    this.last = last;
  }

  FieldBlock block(FormField f) {
    return switch (f.key()) {
      case "document-kind" -> new KindBlock(table);
      case "case-reference" -> new ReferenceBlock(table, patient);
      case "candidate-number" -> new CourseworkBlock(table);
      case "patient-name" -> PatientBlock.name(table);
      case "patient-born" -> PatientBlock.born(table);
      case "patient-record" -> PatientBlock.record(table);
      case "revision" -> new FactBlock(f, table::current, this::revision);
      case "arches-and-notation" -> new FactBlock(f, this::design, this::arches);
      case "teeth" ->
          new FactBlock(
              f, this::design, this::teeth, Words.of("fact.to-chart"), () -> to(Step.CHART));
      case "class-upper" -> new ClassBlock(table, Item.CLASS_UPPER, Arch.UPPER);
      case "class-lower" -> new ClassBlock(table, Item.CLASS_LOWER, Arch.LOWER);
      case "design-drawing" ->
          new FactBlock(
              f, () -> f, this::drawing, Words.of("fact.to-design"), () -> to(Step.SADDLES));
      case "component-schedule" -> new ScheduleBlock(table);
      case "stage-requested" -> new StageRequestedBlock(table);
      case "stage-plan" -> new StagePlanBlock(table, last);
      case "preparations" -> new PreparationsBlock(table);
      case "enclosed" -> new EnclosuresBlock(table);
      case "disinfected" -> new DisinfectionsBlock(table);
      case "signature" -> new SignatureBlock(table);
      case "retention-note" ->
          new FactBlock(f, () -> table.current().prescription(), this::keeping);
      case "laboratory-return" -> new FactBlock(f, () -> f, () -> Words.of("fact.return-page"));
      case "open-findings" ->
          new FactBlock(
              f,
              () -> table.assessment().report(),
              this::findings,
              Words.of("fact.to-review"),
              () -> to(Step.REVIEW));
      default ->
          new AnswerBlock(
              table,
              f.item()
                  .orElseThrow(
                      () -> new IllegalStateException("nothing shows the field " + f.key())));
    };
  }

  private void to(Step step) {
    table.stepProperty().set(step);
  }

  private Notation notation() {
    return table.notationProperty().get();
  }

  /** All that the facts of the mouth and the design depend on. */
  private Object design() {
    Case c = table.current();
    return List.of(c.upperChart(), c.lowerChart(), c.upperDesign(), c.lowerDesign(), notation());
  }

  private String revision() {
    Revision r = Revision.of(table.current());
    String now =
        Words.of(r.issued() ? "fact.revision.issued" : "fact.revision.open", r.number(), r.hash());
    return r.replaces()
        .map(
            old ->
                now
                    + " "
                    + Words.of(
                        "fact.revision.replaces",
                        old.number(),
                        Dates.withWeekday(old.on()),
                        old.hash()))
        .orElse(now);
  }

  private String arches() {
    List<String> designed = new ArrayList<>();
    for (Arch a : Arch.values()) {
      if (!table.current().design(a).components().isEmpty()) {
        designed.add(a.code());
      }
    }
    String which =
        switch (designed.size()) {
          case 0 -> Words.of("fact.arches.none");
          case 1 -> Words.of("fact.arches.one", Words.capital(designed.get(0)));
          default -> Words.of("fact.arches.both");
        };
    return which + " " + Words.of("fact.notation", ToothWords.name(notation()));
  }

  private String teeth() {
    List<String> out = new ArrayList<>();
    for (Arch arch : Arch.values()) {
      out.add(
          Words.of("subject.arch." + arch.code())
              + ". "
              + ToothStates.of(table.current().chart(arch), notation()).lines().stream()
                  .filter(l -> !l.teeth().equals("none"))
                  .map(l -> l.state() + ": " + l.teeth())
                  .collect(Collectors.joining(". "))
              + ".");
    }
    return String.join("\n", out);
  }

  private String drawing() {
    return Words.of("fact.drawing");
  }

  private String keeping() {
    KeepUntil keep = KeepUntil.of(table.current().prescription().regime());
    return DayWords.read(table.current().prescription().text(Item.DATE_ISSUED))
        .map(d -> Words.capital(keep.words(d)) + ".")
        .orElse(Words.of("fact.keep-years", keep.years(), keep.note()));
  }

  private String findings() {
    Report r = table.assessment().report();
    return Words.of(
        "fact.findings",
        r.count(Severity.MUST),
        r.count(Severity.SHOULD),
        r.count(Severity.CONSIDER),
        r.entries().size() - r.standing().size());
  }
}
