package saddlewright.prescription;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.order.Answer;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.casefile.order.StagePlan;
import saddlewright.casefile.order.TreatmentStage;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.design.ArchDesign;
import saddlewright.design.UnknownComponent;
import saddlewright.rules.Severity;

/**
 * How far the form is filled in: each field that this document asks for, with what is still missing
 * from it.
 *
 * <p>It looks at what is filled in, never at whether the design is wise; that is for the rules.
 * What is missing stops nothing: the document prints with ruled lines to fill in by hand.
 *
 * @param lines the fields that are asked for, in the order of the form
 */
public record Completeness(List<Line> lines) {
  /**
   * One field.
   *
   * @param level how strongly it is asked for
   * @param missing what is missing, a sentence each; empty when nothing is
   */
  public record Line(FormField field, Level level, List<String> missing) {
    public Line {
      missing = List.copyOf(missing);
    }

    public boolean isFilled() {
      return missing.isEmpty();
    }
  }

  /** Something that is missing: in which field, how strongly it is asked for, and what. */
  public record Gap(FormField field, Level level, String sentence) {}

  public Completeness {
    lines = List.copyOf(lines);
  }

  /**
   * The state of the form of a case.
   *
   * @param patient whose case it is, when that is known here
   */
  public static Completeness of(Assessment assessment, Optional<PatientIdentity> patient) {
    Reader reader = new Reader(assessment, patient);
    PrescriptionDetails p = assessment.subject().prescription();
    return new Completeness(
        FormField.ALL.stream()
            .filter(f -> f.level(p) != Level.NOT_ASKED)
            .map(f -> new Line(f, f.level(p), reader.missing(f)))
            .toList());
  }

  /**
   * Whether all that must be filled in is; found out no further than to the first gap, so that it
   * can be asked after every edit.
   */
  public static boolean isComplete(Assessment assessment, Optional<PatientIdentity> patient) {
    Reader reader = new Reader(assessment, patient);
    PrescriptionDetails p = assessment.subject().prescription();
    return FormField.ALL.stream()
        .filter(f -> f.level(p) == Level.MUST)
        .allMatch(f -> reader.missing(f).isEmpty());
  }

  /** What is missing of what is asked for so strongly, in the order of the form. */
  public List<Gap> gaps(Level level) {
    List<Gap> out = new ArrayList<>();
    for (Line l : lines) {
      if (l.level() == level) {
        l.missing().forEach(s -> out.add(new Gap(l.field(), level, s)));
      }
    }
    return List.copyOf(out);
  }

  /** Whether all that must be filled in is. */
  public boolean isComplete() {
    return gaps(Level.MUST).isEmpty();
  }

  /** How many fields are asked for so strongly. */
  public int asked(Level level) {
    return (int) lines.stream().filter(l -> l.level() == level).count();
  }

  /** How many of these are filled in. */
  public int filled(Level level) {
    return (int) lines.stream().filter(l -> l.level() == level && l.isFilled()).count();
  }

  /** Finds what is missing from a field, whether it is answered, listed or derived. */
  private static final class Reader {
    private final Assessment assessment;
    private final PrescriptionDetails details;
    private final Optional<PatientIdentity> patient;

    private Reader(Assessment assessment, Optional<PatientIdentity> patient) {
      this.assessment = assessment;
      this.details = assessment.subject().prescription();
      this.patient = patient;
    }

    private List<String> missing(FormField field) {
      return switch (field.key()) {
        case "case-reference" ->
            blank(assessment.subject().reference(), "There is no case reference.");
        case "candidate-number" ->
            blank(details.coursework().candidate(), "There is no candidate number.");
        case "patient-name" ->
            blank(patient.map(PatientIdentity::name).orElse(""), "The patient is not named.");
        case "patient-record" ->
            blank(patient.map(PatientIdentity::record).orElse(""), "There is no record number.");
        case "patient-born" ->
            when(patient.flatMap(PatientIdentity::born).isEmpty(), "The date of birth is missing.");
        case "class-upper", "class-lower", "speech-and-gag", "other-materials" -> List.of();
        case "class-reason" -> classReason();
        case "design-drawing" -> drawing();
        case "component-schedule" -> schedule();
        case "stage-requested" ->
            when(
                details.stages().requested().isEmpty(),
                "It is not said which stage is asked for now.");
        case "stage-plan" -> stages();
        case "date-required" -> dateRequired(field);
        case "preparations" -> preparations();
        case "enclosed" ->
            details.enclosures().isEmpty() ? answer(field, Item.ENCLOSED) : List.of();
        case "disinfected" ->
            details.disinfections().isEmpty() ? answer(field, Item.DISINFECTED) : List.of();
        case "signature" -> signature();
        case "open-findings" -> findings();
        default -> field.item().map(i -> answer(field, i)).orElse(List.of());
      };
    }

    private List<String> answer(FormField field, Item item) {
      Answer a = details.answer(item);
      return switch (a.state()) {
        case BLANK -> List.of(field.title() + ": not filled in.");
        case TO_FOLLOW ->
            when(a.by().isEmpty(), field.title() + ": to follow, but it is not said by when.");
        case GIVEN, NONE, NOT_APPLICABLE -> List.of();
      };
    }

    private List<String> classReason() {
      boolean otherwise =
          Stream.of(Item.CLASS_UPPER, Item.CLASS_LOWER).anyMatch(i -> !details.text(i).isBlank());
      return when(
          otherwise && details.text(Item.CLASS_REASON).isBlank(),
          "The class is read otherwise than it is worked out, without a reason.");
    }

    private List<String> drawing() {
      List<String> out = new ArrayList<>();
      if (Stream.of(Arch.values()).allMatch(a -> design(a).components().isEmpty())) {
        out.add("Neither arch has a design yet.");
        return out;
      }
      for (Arch arch : Arch.values()) {
        long unknown = design(arch).stream(UnknownComponent.class).count();
        if (unknown > 0) {
          out.add(
              "The "
                  + arch.code()
                  + " design holds "
                  + (unknown == 1 ? "a component" : unknown + " components")
                  + " of a kind that is not known here.");
        }
      }
      return out;
    }

    /** The four variables of the published audits: saddles, support, retention, connectors. */
    private List<String> schedule() {
      List<String> out = new ArrayList<>();
      for (Arch arch : Arch.values()) {
        if (!design(arch).components().isEmpty()) {
          for (AuditedVariable v : AuditedVariable.values()) {
            if (!v.isIn(design(arch))) {
              out.add("The " + arch.code() + " design has " + v.lacking() + ".");
            }
          }
        }
      }
      return out;
    }

    private List<String> stages() {
      StagePlan plan = details.stages();
      boolean dated =
          plan.fitting().isPresent()
              || plan.stages().values().stream().anyMatch(s -> s.due().isPresent());
      return when(!dated, "No stage has a date: set the day of the fitting.");
    }

    /** One date must not be said in two ways. */
    private List<String> dateRequired(FormField field) {
      Optional<LocalDate> written = Dates.leading(details.text(Item.DATE_REQUIRED));
      Optional<LocalDate> counted =
          details
              .stages()
              .requested()
              .flatMap(s -> Optional.ofNullable(Timetable.due(details.stages()).get(s)));
      if (written.isPresent() && counted.isPresent() && !written.equals(counted)) {
        return List.of(
            "The date required is "
                + Dates.words(written.get())
                + ", but the stage plan comes to "
                + Dates.words(counted.get())
                + " for the stage requested.");
      }
      return answer(field, Item.DATE_REQUIRED);
    }

    /** A framework is ordered on a cast that shows every preparation, done or declined. */
    private List<String> preparations() {
      boolean ordered =
          details
              .stages()
              .requested()
              .filter(s -> s.compareTo(TreatmentStage.FRAMEWORK) >= 0)
              .isPresent();
      if (!ordered) {
        return List.of();
      }
      int open = PreparationPlan.of(assessment, Notation.FDI).unsettled().size();
      return when(
          open > 0,
          (open == 1 ? "One mouth preparation is" : open + " mouth preparations are")
              + " neither checked nor declined with a reason.");
    }

    private List<String> signature() {
      return when(
          SignedDesign.of(assessment.subject()).isVoid(),
          "The design has changed since it was signed: sign it again.");
    }

    private List<String> findings() {
      long open =
          assessment.report().standing().stream()
              .filter(e -> e.severity() == Severity.MUST)
              .count();
      return when(
          open > 0,
          (open == 1 ? "One finding" : open + " findings")
              + " of the weight must stand without a reason.");
    }

    private ArchDesign design(Arch arch) {
      return assessment.arch(arch).design();
    }

    private static List<String> blank(String value, String sentence) {
      return when(value.isBlank(), sentence);
    }

    private static List<String> when(boolean so, String sentence) {
      return so ? List.of(sentence) : List.of();
    }
  }
}
