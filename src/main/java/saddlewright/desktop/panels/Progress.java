package saddlewright.desktop.panels;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.Backing;
import saddlewright.design.Clasp;
import saddlewright.design.FinishLine;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.Plating;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.TissueStop;
import saddlewright.desktop.Step;
import saddlewright.desktop.StepOfRule;
import saddlewright.rules.Finding;
import saddlewright.rules.RuleBook;
import saddlewright.rules.Severity;

/** How far each step of the work has come. */
final class Progress {
  /** State of a step. */
  enum State {
    EMPTY,
    BEGUN,
    DONE
  }

  private final Assessment now;
  private final BooleanSupplier complete;

  /**
   * @param complete whether the form of the prescription is filled in; asked only where it is begun
   */
  Progress(Assessment now, BooleanSupplier complete) {
    this.now = now;
    this.complete = complete;
  }

  /** The number of findings that stand for a step. */
  long findings(Step step) {
    if (step == Step.REVIEW) {
      return now.report().standing().size();
    }
    return now.report().standing().stream().filter(f -> stepOf(f) == step).count();
  }

  /** The gravest weight of the findings that stand for a step. */
  Optional<Severity> gravest(Step step) {
    return now.report().standing().stream()
        .filter(f -> step == Step.REVIEW || stepOf(f) == step)
        .map(Finding::severity)
        .min(Comparator.naturalOrder());
  }

  State state(Step step) {
    return switch (step) {
      case CHART -> any(a -> teeth(a).anyMatch(a::isLost)) ? State.DONE : State.EMPTY;
      case SURVEY ->
          any(a -> teeth(a).anyMatch(t -> !a.tooth(t).undercuts().isEmpty()))
              ? State.DONE
              : State.EMPTY;
      case SADDLES -> saddles();
      case SUPPORT -> has(Rest.class);
      case RETENTION -> has(Clasp.class);
      case BRACING -> has(ReciprocalArm.class, GuidePlate.class, GuidePlane.class, Plating.class);
      case CONNECTORS -> has(MajorConnector.class);
      case INDIRECT_RETENTION ->
          designs().anyMatch(d -> d.stream(Rest.class).anyMatch(Rest::indirectRetainer))
              ? State.DONE
              : State.EMPTY;
      case REVIEW -> designs().allMatch(d -> d.components().isEmpty()) ? State.EMPTY : State.BEGUN;
      case PRESCRIPTION -> prescription();
    };
  }

  private State saddles() {
    long areas =
        Stream.of(Arch.values())
            .flatMap(a -> now.arch(a).classification().areas().stream())
            .count();
    long covered =
        Stream.of(Arch.values())
            .flatMap(
                a ->
                    now.arch(a).classification().areas().stream()
                        .filter(x -> !now.subject().design(a).saddlesIn(x.span()).isEmpty()))
            .count();
    State any =
        has(Saddle.class, RetentionMesh.class, FinishLine.class, TissueStop.class, Backing.class);
    return any == State.EMPTY ? any : covered < areas ? State.BEGUN : State.DONE;
  }

  private State prescription() {
    PrescriptionDetails p = now.subject().prescription();
    if (p.equals(PrescriptionDetails.EMPTY)) {
      return State.EMPTY;
    }
    return complete.getAsBoolean() ? State.DONE : State.BEGUN;
  }

  private State has(Class<?>... kinds) {
    return designs()
            .flatMap(d -> d.components().stream())
            .anyMatch(c -> Stream.of(kinds).anyMatch(k -> k.isInstance(c)))
        ? State.DONE
        : State.EMPTY;
  }

  private Stream<ArchDesign> designs() {
    return Stream.of(now.subject().upperDesign(), now.subject().lowerDesign());
  }

  private boolean any(java.util.function.Predicate<ArchChart> condition) {
    return Stream.of(now.subject().upperChart(), now.subject().lowerChart()).anyMatch(condition);
  }

  private static Stream<Tooth> teeth(ArchChart chart) {
    return Tooth.in(chart.arch()).stream();
  }

  private static Step stepOf(Finding f) {
    return StepOfRule.of(RuleBook.find(f.ruleId()));
  }
}
