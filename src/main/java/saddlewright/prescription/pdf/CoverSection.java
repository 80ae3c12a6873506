package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.casefile.order.TreatmentStage;
import saddlewright.dentition.Arch;
import saddlewright.prescription.Completeness;
import saddlewright.prescription.DesignStatement;
import saddlewright.prescription.Level;

/** The order: who asks whom for what, by when, in what; whether it is complete; who signs. */
final class CoverSection implements Section {
  private final Printout printout;
  private final FormFields form;

  CoverSection(Printout printout) {
    this.printout = printout;
    this.form = new FormFields(printout);
  }

  @Override
  public void write(Flow flow) throws IOException {
    new TitleBlock(printout).write(flow);
    asked(flow);
    if (!printout.isCoursework()) {
      people(flow);
    }
    Fields.beside(
        flow,
        Fields.ofPage("Denture", denture()),
        Fields.ofPage("Materials at a glance", materials()));
    Fields.beside(flow, design(Arch.UPPER), design(Arch.LOWER));
    state(flow);
    if (printout.isCoursework() && !printout.subject().story().isBlank()) {
      flow.heading("The case");
      flow.paragraph(printout.subject().story(), Flow.BODY, Shade.INK);
    }
    if (!printout.isCoursework()) {
      new SignatureSection(printout).write(flow);
    }
  }

  /** What the laboratory looks for first, in larger type. */
  private void asked(Flow flow) throws IOException {
    if (printout.isCoursework()) {
      return;
    }
    PrescriptionDetails p = printout.details();
    Optional<TreatmentStage> stage = p.stages().requested();
    String time =
        stage
            .flatMap(s -> p.stages().at(s).time())
            .filter(t -> form.words(Item.DATE_REQUIRED).matches(".*\\d{4}"))
            .map(t -> ", " + t)
            .orElse("");
    new Facts(
            List.of(
                new Facts.Fact(
                    "Stage requested now",
                    stage.map(TreatmentStage::title).orElse(""),
                    form.isRequired("stage-requested")),
                new Facts.Fact(
                    "Date and time required",
                    form.words(Item.DATE_REQUIRED) + time,
                    form.isRequired(Item.DATE_REQUIRED.key())),
                new Facts.Fact(
                    "Date issued",
                    form.words(Item.DATE_ISSUED),
                    form.isRequired(Item.DATE_ISSUED.key()))))
        .write(flow);
  }

  private void people(Flow flow) throws IOException {
    Fields.beside(
        flow,
        Fields.ofPage(
            "Prescriber",
            form.of(
                Item.PRESCRIBER_NAME,
                Item.PRESCRIBER_REGISTRATION,
                Item.PRACTICE,
                Item.PRESCRIBER_CONTACT)),
        Fields.ofPage(
            "Laboratory",
            form.of(
                Item.LABORATORY_NAME,
                Item.LABORATORY_ADDRESS,
                Item.LABORATORY_REGISTRATION,
                Item.LABORATORY_ATTENTION)));
  }

  private List<Fields.Field> denture() {
    List<Fields.Field> out = new ArrayList<>();
    out.addAll(form.of(Item.DEVICE_TYPE));
    out.add(Fields.Field.of("Arches", arches()));
    for (Arch arch : Arch.values()) {
      out.add(Fields.Field.of("Class, " + arch.code(), reading(arch)));
    }
    if (!printout.isCoursework()) {
      out.add(
          Fields.Field.of(
              "Patient",
              printout.options().patient().isPresent()
                  ? "named on the identity slip, which is kept apart"
                  : "known by the case reference alone"));
    }
    return out;
  }

  private String arches() {
    List<String> made =
        java.util.Arrays.stream(Arch.values())
            .filter(a -> !printout.schedule().in(a).isEmpty())
            .map(Arch::code)
            .toList();
    return made.isEmpty()
        ? "none: no denture is designed yet"
        : made.size() == 2 ? "upper and lower" : made.get(0) + " only";
  }

  /** The class as the prescriber reads it, never without the one that was worked out. */
  private String reading(Arch arch) {
    String workedOut = printout.assessment().arch(arch).classification().label();
    String read = form.words(arch == Arch.UPPER ? Item.CLASS_UPPER : Item.CLASS_LOWER);
    if (read.isEmpty()) {
      return workedOut;
    }
    String reason = form.words(Item.CLASS_REASON);
    return read
        + ", as read by the prescriber; worked out: "
        + workedOut
        + (reason.isEmpty() ? "; no reason is given" : "; reason: " + reason);
  }

  private List<Fields.Field> materials() {
    return form.of(
        Item.FRAMEWORK_ALLOY,
        Item.NICKEL_FREE,
        Item.BASE_POLYMER,
        Item.TOOTH_MATERIAL,
        Item.TOOTH_SHADE,
        Item.ALLERGIES);
  }

  /** The four audited variables of an arch, with the numbers under which the schedule has them. */
  private Fields design(Arch arch) {
    return Fields.ofPage(
        Printout.name(arch) + " design at a glance",
        DesignStatement.of(printout.assessment().arch(arch), printout.schedule()).stream()
            .map(v -> Fields.Field.of(v.category().title(), v.words()))
            .toList());
  }

  /** Whether the document is complete, with the name of whatever it lacks. */
  private void state(Flow flow) throws IOException {
    Completeness c = printout.completeness();
    List<Completeness.Gap> gaps = c.gaps(Level.MUST);
    String verdict =
        gaps.isEmpty()
            ? "Complete: all " + c.asked(Level.MUST) + " required fields are filled in."
            : "Not complete: "
                + c.filled(Level.MUST)
                + " of "
                + c.asked(Level.MUST)
                + " required fields are filled in.";
    String missing =
        gaps.stream()
            .map(Completeness.Gap::field)
            .distinct()
            .map(f -> f.title())
            .collect(Collectors.joining("; "));
    String sentences =
        gaps.stream()
            .map(Completeness.Gap::sentence)
            .filter(s -> !s.endsWith(": not filled in."))
            .collect(Collectors.joining(" "));
    double top = flow.y();
    PDStructureElement p = flow.tags().under(flow.tags().document(), "P");
    double x = flow.left() + 9;
    double width = Flow.MEASURE - 9;
    flow.need(40);
    flow.block(p, x, width, verdict, Weight.BOLD, Flow.BODY, Shade.INK);
    if (!missing.isEmpty()) {
      flow.block(p, x, width, "Missing: " + missing + ".", Weight.REGULAR, 8, Shade.INK);
    }
    if (!sentences.isEmpty()) {
      flow.block(p, x, width, sentences, Weight.REGULAR, 8, Shade.INK);
    }
    if (flow.y() > top) {
      flow.sheet().beginArtifact();
      flow.sheet().bar(flow.left(), top, 3, flow.y() - top, Shade.INK);
      flow.sheet().end();
    }
    flow.gap(9);
  }
}
