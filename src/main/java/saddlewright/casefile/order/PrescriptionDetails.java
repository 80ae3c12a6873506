package saddlewright.casefile.order;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What a prescription says besides the design.
 *
 * @param kind prescription or coursework
 * @param regime by which rules it is complete
 * @param answers what stands in the fields; those that are absent are blank
 * @param enclosures what is sent along
 * @param disinfections how that was disinfected
 * @param preparations what has been noted of mouth preparations
 * @param stages the plan of the treatment
 * @param signature the prescriber's
 * @param coursework what a coursework sheet carries besides
 * @param issued the states that have gone out, the latest last
 */
public record PrescriptionDetails(
    DocumentKind kind,
    Regime regime,
    Map<Item, Answer> answers,
    List<Enclosure> enclosures,
    List<Disinfection> disinfections,
    Preparations preparations,
    StagePlan stages,
    Optional<Signature> signature,
    Coursework coursework,
    List<IssuedRevision> issued) {

  public static final PrescriptionDetails EMPTY =
      new PrescriptionDetails(
          DocumentKind.PRESCRIPTION,
          Regime.TEACHING,
          Map.of(),
          List.of(),
          List.of(),
          Preparations.NONE,
          StagePlan.EMPTY,
          Optional.empty(),
          Coursework.EMPTY,
          List.of());

  public PrescriptionDetails {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(regime);
    Objects.requireNonNull(preparations);
    Objects.requireNonNull(stages);
    Objects.requireNonNull(signature);
    Objects.requireNonNull(coursework);
    Map<Item, Answer> kept = new EnumMap<>(Item.class);
    kept.putAll(answers);
    kept.values().removeIf(Answer::isBlank);
    answers = Collections.unmodifiableMap(kept);
    enclosures = List.copyOf(enclosures);
    disinfections = List.copyOf(disinfections);
    issued = List.copyOf(issued);
    for (int i = 1; i < issued.size(); i++) {
      if (issued.get(i).number() <= issued.get(i - 1).number()) {
        throw new IllegalArgumentException(
            "issued revisions stand in order, each number once: revision "
                + issued.get(i).number()
                + " follows revision "
                + issued.get(i - 1).number());
      }
    }
  }

  /** What stands in a field. */
  public Answer answer(Item item) {
    return answers.getOrDefault(item, Answer.BLANK);
  }

  /** The words that were given; empty when the field is blank or answered otherwise. */
  public String text(Item item) {
    return answer(item).text();
  }

  public PrescriptionDetails with(Item item, Answer answer) {
    Map<Item, Answer> next = new EnumMap<>(Item.class);
    next.putAll(answers);
    next.put(item, answer);
    return withAnswers(next);
  }

  public PrescriptionDetails with(Item item, String text) {
    return with(item, Answer.of(text));
  }

  public PrescriptionDetails withAnswers(Map<Item, Answer> other) {
    return copy(c -> c.answers = other);
  }

  public PrescriptionDetails withKind(DocumentKind other) {
    return copy(c -> c.kind = other);
  }

  public PrescriptionDetails withRegime(Regime other) {
    return copy(c -> c.regime = other);
  }

  public PrescriptionDetails withEnclosures(List<Enclosure> other) {
    return copy(c -> c.enclosures = other);
  }

  public PrescriptionDetails withDisinfections(List<Disinfection> other) {
    return copy(c -> c.disinfections = other);
  }

  public PrescriptionDetails with(Preparations other) {
    return copy(c -> c.preparations = other);
  }

  public PrescriptionDetails with(StagePlan other) {
    return copy(c -> c.stages = other);
  }

  public PrescriptionDetails withSignature(Optional<Signature> other) {
    return copy(c -> c.signature = other);
  }

  public PrescriptionDetails with(Coursework other) {
    return copy(c -> c.coursework = other);
  }

  public PrescriptionDetails withIssued(List<IssuedRevision> other) {
    return copy(c -> c.issued = other);
  }

  private PrescriptionDetails copy(Consumer<Copy> change) {
    Copy c = new Copy(this);
    change.accept(c);
    return c.build();
  }

  /** The members of details while one of them is changed. */
  private static final class Copy {
    private DocumentKind kind;
    private Regime regime;
    private Map<Item, Answer> answers;
    private List<Enclosure> enclosures;
    private List<Disinfection> disinfections;
    private Preparations preparations;
    private StagePlan stages;
    private Optional<Signature> signature;
    private Coursework coursework;
    private List<IssuedRevision> issued;

    private Copy(PrescriptionDetails p) {
      kind = p.kind;
      regime = p.regime;
      answers = p.answers;
      enclosures = p.enclosures;
      disinfections = p.disinfections;
      preparations = p.preparations;
      stages = p.stages;
      signature = p.signature;
      coursework = p.coursework;
      issued = p.issued;
    }

    private PrescriptionDetails build() {
      return new PrescriptionDetails(
          kind,
          regime,
          answers,
          enclosures,
          disinfections,
          preparations,
          stages,
          signature,
          coursework,
          issued);
    }
  }
}
