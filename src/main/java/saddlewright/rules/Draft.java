package saddlewright.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;

/** A finding that is being written. */
public final class Draft {
  private final Claim claim;
  private final String name;
  private final List<Subject> subjects;
  private final List<Remedy> remedies = new ArrayList<>();
  private final Consumer<Finding> verdict;
  private Severity severity;
  private String fact = "";
  private Comparison comparison = new Comparison("", "");

  Draft(Claim claim, String name, List<Subject> subjects, Consumer<Finding> verdict) {
    this.verdict = verdict;
    this.claim = claim;
    this.name = name;
    this.subjects = List.copyOf(subjects);
    this.severity = claim.severity();
  }

  /** What is wrong, without the numbers. */
  public Draft fact(String words) {
    this.fact = words;
    return this;
  }

  /** The measured and the required value, with their units. */
  public Draft measured(String actual, String required) {
    this.comparison = new Comparison(actual, required);
    return this;
  }

  /** A weight below the usual one of the rule. */
  public Draft weighing(Severity lesser) {
    this.severity = lesser;
    return this;
  }

  /** Offers an edit; the best is offered first. */
  public Draft remedy(String label, DesignEdit edit) {
    remedies.add(new Remedy(label, subjects.get(0).arch(), edit));
    return this;
  }

  /** Adds the finding to the verdict. */
  public Finding done() {
    String sentence =
        Sentence.capital(name)
            + ": "
            + fact
            + " ("
            + comparison.actual()
            + " against "
            + comparison.required()
            + ")";
    Finding done =
        new Finding(
            claim.id(), severity, subjects.get(0).arch(), subjects, sentence, comparison, remedies);
    verdict.accept(done);
    return done;
  }
}
