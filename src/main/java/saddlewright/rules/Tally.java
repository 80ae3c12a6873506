package saddlewright.rules;

/**
 * How far the rule book could judge a case; the four counts add up to all its rules.
 *
 * @param judged rules that were judged in full
 * @param unanswered rules that wait for a charted value, wholly or in part
 * @param notApplicable rules that found nothing to judge
 * @param notTaught rules that the school leaves out
 */
public record Tally(int judged, int unanswered, int notApplicable, int notTaught) {}
