package saddlewright.rules;

import java.util.ArrayList;
import java.util.List;
import saddlewright.chart.ChartField;
import saddlewright.design.Subject;

/** The verdict of a rule while the rule is weighing a design. */
public final class Judging {
  private final Claim claim;
  private final Profile profile;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Question> questions = new ArrayList<>();
  private final List<Credit> credits = new ArrayList<>();
  private boolean applies;

  Judging(Claim claim, Profile profile) {
    this.claim = claim;
    this.profile = profile;
  }

  /**
   * Begins a finding; {@link Draft#done()} adds it to the verdict.
   *
   * @param name of its chief subject, as the sentence begins
   * @param subjects what it is about, the chief one first
   */
  public Draft finding(String name, Subject... subjects) {
    return finding(name, List.of(subjects));
  }

  /** The same for subjects in a list. */
  public Draft finding(String name, List<Subject> subjects) {
    return new Draft(claim, name, subjects, this::add);
  }

  private void add(Finding finding) {
    applies = true;
    findings.add(finding.weighing(profile.severity(claim, finding.severity())));
  }

  /** Says that the rule cannot be judged for these subjects for want of a charted value. */
  public void unanswered(ChartField field, Subject... subjects) {
    applies = true;
    questions.add(new Question(claim.id(), field, List.of(subjects)));
  }

  /**
   * Says that the design does what the rule asks, and what does it.
   *
   * @param words a verb phrase that goes on from the name of the component
   * @param earners the components, or other subjects, that earn the credit
   */
  public void upheld(String words, Subject... earners) {
    applies = true;
    for (Subject s : earners) {
      credits.add(new Credit(claim.id(), s, words));
    }
  }

  /** Says that the rule was judged and is met, without credit to any one component. */
  public void judged() {
    applies = true;
  }

  Verdict verdict() {
    return applies ? new Verdict(findings, questions, credits, true) : Verdict.NOT_APPLICABLE;
  }
}
