package saddlewright.prescription;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.order.Signature;
import saddlewright.casefile.order.StagePlan;
import saddlewright.casefile.order.TreatmentStage;
import saddlewright.chart.ArchChart;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.Saddle;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Literature;
import saddlewright.rules.Source;

/** What has to come before what, and what has been done in spite of it. It bars nothing. */
final class StageGates {
  private static final Source SIGNED_FIRST =
      Source.read(Literature.SCHOOL_PROTOCOL + ": no tooth is altered before the form is signed");
  private static final Source DESIGN_FIRST =
      Source.read(Literature.STAGE_GUIDES + ": design before master impressions");
  private static final Source CHECKED_FIRST =
      Source.read(
          Literature.CLINIC_STANDARD + ": preparations are checked before the final impression");
  private static final int NAMED = 4;

  private final Assessment assessment;
  private final Case subject;
  private final StagePlan plan;
  private final PreparationPlan preparations;
  private final SignedDesign signed;

  StageGates(Assessment assessment, PreparationPlan preparations) {
    this.assessment = assessment;
    this.subject = assessment.subject();
    this.plan = subject.prescription().stages();
    this.preparations = preparations;
    this.signed = SignedDesign.of(subject);
  }

  /** What stands in the way of a stage that is still to come. */
  List<Gate> before(TreatmentStage stage) {
    List<Gate> out = new ArrayList<>();
    switch (stage) {
      case MOUTH_PREPARATION -> {
        signature(SIGNED_FIRST, out);
        if (isOpen(TreatmentStage.CONSENT)) {
          out.add(
              Gate.note(
                  "The patient's agreement to the design is not noted.",
                  Source.read(Literature.STAGE_GUIDES)));
        }
      }
      case MASTER_IMPRESSION -> {
        signature(DESIGN_FIRST, out);
        settled(out);
      }
      case FRAMEWORK -> {
        signature(DESIGN_FIRST, out);
        settled(out);
        frontTryIn(out);
      }
      case FRAMEWORK_TRY_IN -> alteredCast(out);
      case FRAMEWORK_REGISTRATION, TOOTH_TRY_IN -> immediate(stage, out);
      default -> {
        // No condition on the other stages was found in the sources.
      }
    }
    return out;
  }

  private boolean isOpen(TreatmentStage stage) {
    return !plan.at(stage).leftOut() && plan.at(stage).done().isEmpty();
  }

  private void signature(Source source, List<Gate> out) {
    if (!signed.holds()) {
      out.add(Gate.closed(signed.gap(), signed.remedy(), source));
    }
  }

  private void settled(List<Gate> out) {
    List<PreparationPlan.Entry> open = preparations.unsettled();
    if (!open.isEmpty()) {
      out.add(
          Gate.closed(
              (open.size() == 1
                      ? "One preparation is not checked: "
                      : open.size() + " preparations are not checked: ")
                  + named(open)
                  + ".",
              "Check each, or decline it with the reason.",
              CHECKED_FIRST));
    }
  }

  private static String named(List<PreparationPlan.Entry> entries) {
    String first =
        entries.stream()
            .limit(NAMED)
            .map(e -> e.kind().altersTeeth() ? e.place() : StageWords.inside(e.kind().title()))
            .distinct()
            .collect(Collectors.joining(", "));
    return entries.size() > NAMED ? first + " and " + (entries.size() - NAMED) + " more" : first;
  }

  private void frontTryIn(List<Gate> out) {
    ArchChart upper = subject.upperChart();
    List<Tooth> front = upper.where(t -> t.isAnterior() && upper.isReplaced(t));
    boolean immediate =
        front.stream().anyMatch(t -> upper.tooth(t).status() == ToothStatus.TO_BE_EXTRACTED);
    if (!front.isEmpty() && !immediate && !subject.upperDesign().components().isEmpty()) {
      out.add(
          Gate.note(
              "Upper front teeth are replaced: a try-in of them before the framework is made shows"
                  + " where the metal must stay out of sight.",
              Source.read(Literature.STAGE_GUIDES + ": optional")));
    }
  }

  private void alteredCast(List<Gate> out) {
    boolean freeEnd =
        AreaSupport.all(assessment.lower()).stream()
            .anyMatch(a -> a.isFreeEnd() && a.saddle().base() == Saddle.Base.ACRYLIC_ON_MESH);
    if (freeEnd) {
      out.add(
          Gate.note(
              "Lower free-end saddle: the altered-cast impression is taken on the tried-in"
                  + " framework.",
              Source.read(Literature.ABUTMENT_PREPARATION)));
    }
  }

  private void immediate(TreatmentStage stage, List<Gate> out) {
    List<Tooth> standing = new ArrayList<>();
    for (Arch arch : Arch.values()) {
      for (Tooth t : Tooth.in(arch)) {
        if (subject.chart(arch).tooth(t).status() == ToothStatus.TO_BE_EXTRACTED
            && subject.design(arch).saddleAt(t).isPresent()) {
          standing.add(t);
        }
      }
    }
    if (!standing.isEmpty()) {
      String teeth = ToothWords.list(standing, preparations.notation());
      out.add(
          Gate.note(
              (stage == TreatmentStage.TOOTH_TRY_IN
                      ? "The replacement of " + teeth + " cannot be tried in while the natural "
                      : "Registration may not be possible as usual for " + teeth + " while the ")
                  + (standing.size() == 1 ? "tooth stands" : "teeth stand")
                  + ": give the laboratory shade, mould and position beforehand.",
              Source.read(Literature.IMMEDIATE_DENTURES)));
    }
  }

  /** What was done in spite of a gate, a sentence each; cut enamel stays cut. */
  List<String> breaches() {
    List<String> out = new ArrayList<>();
    Optional<LocalDate> impression = plan.at(TreatmentStage.MASTER_IMPRESSION).done();
    for (PreparationPlan.Entry e : preparations.entries()) {
      if (e.isCut()) {
        cut(e).ifPresent(out::add);
        if (e.mark().on().isPresent()
            && impression.filter(day -> e.mark().on().get().isAfter(day)).isPresent()) {
          out.add(
              e.place()
                  + " was altered on "
                  + Dates.words(e.mark().on().get())
                  + ", after the master impression of "
                  + Dates.words(impression.get())
                  + ": the cast shows it as it was.");
        }
      }
    }
    List<PreparationPlan.Entry> open = preparations.unsettled();
    for (TreatmentStage stage :
        List.of(TreatmentStage.MASTER_IMPRESSION, TreatmentStage.FRAMEWORK)) {
      Optional<LocalDate> done = plan.at(stage).done();
      if (done.isPresent() && !open.isEmpty()) {
        out.add(
            quoted(stage)
                + " is noted as done on "
                + Dates.words(done.get())
                + " although "
                + (open.size() == 1
                    ? "one preparation is not checked: "
                    : open.size() + " preparations are not checked: ")
                + named(open)
                + ".");
      }
      if (done.isPresent() && signedAfter(done.get())) {
        out.add(
            quoted(stage)
                + " is noted as done on "
                + Dates.words(done.get())
                + ", "
                + notYetSigned()
                + ".");
      }
    }
    return out;
  }

  private static String quoted(TreatmentStage stage) {
    return "“" + stage.title() + "”";
  }

  private Optional<String> cut(PreparationPlan.Entry e) {
    Optional<LocalDate> on = e.mark().on();
    if (signed.signature().isEmpty()) {
      return Optional.of(
          e.place()
              + " was altered"
              + on.map(d -> " on " + Dates.words(d)).orElse("")
              + ", but the design is not signed.");
    }
    if (on.isEmpty()) {
      return Optional.of(
          e.place()
              + " was altered without a date: whether the design was signed before cannot be told.");
    }
    return signedAfter(on.get())
        ? Optional.of(
            e.place() + " was altered on " + Dates.words(on.get()) + ", " + notYetSigned() + ".")
        : Optional.empty();
  }

  private boolean signedAfter(LocalDate day) {
    return signed.signature().map(s -> s.on().isAfter(day)).orElse(true);
  }

  private String notYetSigned() {
    return signed
        .signature()
        .map(Signature::on)
        .map(d -> "before the design was signed on " + Dates.words(d))
        .orElse("but the design is not signed");
  }
}
