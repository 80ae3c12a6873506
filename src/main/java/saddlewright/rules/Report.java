package saddlewright.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import saddlewright.chart.ChartField;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;

/**
 * What the rule book has to say of a case, with the waivers that answer it.
 *
 * @param entries all findings, gravest first, waived or not
 * @param questions what could not be judged, by the value that is wanting
 * @param credits what the design does for the rules: its own argument, by subject
 * @param tally how many rules were judged, wait, or do not apply
 * @param unneededWaivers waivers that answer no finding any more
 */
public record Report(
    List<Entry> entries,
    List<OpenQuestion> questions,
    List<Credit> credits,
    Tally tally,
    List<Waiver> unneededWaivers) {

  /** Whether a finding still stands. */
  public enum State {
    OPEN,
    WAIVED,
    /** Waived once, for facts that have changed since: it stands again. */
    STALE
  }

  /** A finding and the waiver given for it, if any. */
  public record Entry(Finding finding, State state, Optional<Waiver> waiver) {
    public boolean stands() {
      return state != State.WAIVED;
    }
  }

  public Report {
    entries = List.copyOf(entries);
    questions = List.copyOf(questions);
    credits = List.copyOf(credits);
    unneededWaivers = List.copyOf(unneededWaivers);
  }

  /** Judges both arches by the whole rule book; waivers do not answer a hard stop. */
  public static Report of(List<Situation> arches, List<Waiver> waivers) {
    return upon(arches.stream().map(Judgement::of).toList(), waivers);
  }

  /** What has been judged of both arches, with the waivers that answer it. */
  public static Report upon(List<Judgement> arches, List<Waiver> waivers) {
    List<Entry> entries = new ArrayList<>();
    List<Question> questions = new ArrayList<>();
    List<Credit> credits = new ArrayList<>();
    int judged = 0;
    int unanswered = 0;
    int notApplicable = 0;
    int notTaught = 0;
    List<Rule> rules = RuleBook.rules();
    for (int i = 0; i < rules.size(); i++) {
      Rule rule = rules.get(i);
      boolean taught = false;
      boolean applies = false;
      boolean asks = false;
      for (Judgement j : arches) {
        Verdict v = j.verdicts().get(i);
        taught |= j.situation().profile().teaches(rule);
        applies |= v.applies();
        asks |= !v.questions().isEmpty();
        v.findings().forEach(f -> entries.add(entry(rule, f, waivers)));
        questions.addAll(v.questions());
        credits.addAll(v.credits());
      }
      if (!taught) {
        notTaught++;
      } else if (asks) {
        unanswered++;
      } else if (applies) {
        judged++;
      } else {
        notApplicable++;
      }
    }
    entries.sort(
        Comparator.comparing((Entry e) -> e.finding().severity())
            .thenComparing(e -> e.finding().arch())
            .thenComparing(e -> e.finding().key()));
    return new Report(
        entries,
        byField(questions),
        credits,
        new Tally(judged, unanswered, notApplicable, notTaught),
        unneeded(entries, waivers));
  }

  private static Entry entry(Rule rule, Finding f, List<Waiver> waivers) {
    if (rule.isHardStop()) {
      return new Entry(f, State.OPEN, Optional.empty());
    }
    Optional<Waiver> w =
        waivers.stream()
            .filter(x -> RuleBook.currentKey(x.findingKey()).equals(f.key()))
            .findFirst();
    State state =
        w.map(x -> x.facts().equals(f.facts()) ? State.WAIVED : State.STALE).orElse(State.OPEN);
    return new Entry(f, state, w);
  }

  private static List<Waiver> unneeded(List<Entry> entries, List<Waiver> waivers) {
    Set<Waiver> used = new HashSet<>();
    entries.forEach(e -> e.waiver().ifPresent(used::add));
    return waivers.stream().filter(w -> !used.contains(w)).toList();
  }

  /**
   * The fields of one kind that are charted tooth by tooth, each with the one that has all their
   * teeth, so that nobody is sent twice to the same tooth.
   */
  private static Map<ChartField, ChartField> joined(List<Question> questions) {
    Map<String, Set<Tooth>> teeth = new LinkedHashMap<>();
    for (Question q : questions) {
      if (isByTooth(q.field())) {
        teeth
            .computeIfAbsent(q.field().arch() + "/" + q.field().kind(), k -> new LinkedHashSet<>())
            .addAll(q.field().teeth());
      }
    }
    Map<ChartField, ChartField> out = new LinkedHashMap<>();
    for (Question q : questions) {
      ChartField f = q.field();
      if (isByTooth(f)) {
        out.put(
            f,
            new ChartField(
                f.kind(),
                f.arch(),
                List.copyOf(teeth.get(f.arch() + "/" + f.kind())),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
      }
    }
    return out;
  }

  private static boolean isByTooth(ChartField f) {
    return !f.teeth().isEmpty() && f.zone().isEmpty() && f.site().isEmpty();
  }

  /** One question for each value that is wanting, whoever asks for it. */
  private static List<OpenQuestion> byField(List<Question> questions) {
    Map<ChartField, List<Question>> byField = new LinkedHashMap<>();
    Map<ChartField, ChartField> joined = joined(questions);
    questions.forEach(
        q ->
            byField
                .computeIfAbsent(joined.getOrDefault(q.field(), q.field()), f -> new ArrayList<>())
                .add(q));
    List<OpenQuestion> out = new ArrayList<>();
    byField.forEach(
        (field, asked) -> {
          Set<String> rules = new TreeSet<>();
          Set<Subject> subjects = new LinkedHashSet<>();
          asked.forEach(
              q -> {
                rules.add(q.ruleId());
                subjects.addAll(q.subjects());
              });
          out.add(new OpenQuestion(field, List.copyOf(rules), List.copyOf(subjects)));
        });
    out.sort(
        Comparator.comparing((OpenQuestion q) -> q.field().arch())
            .thenComparing(q -> q.field().kind())
            .thenComparing(q -> q.field().key()));
    return out;
  }

  public List<Finding> standing() {
    return entries.stream().filter(Entry::stands).map(Entry::finding).toList();
  }

  public long count(Severity severity) {
    return standing().stream().filter(f -> f.severity() == severity).count();
  }

  /** The lines of the design's own argument that belong to one subject, weightiest first. */
  public List<Credit> creditsOf(Subject subject) {
    return credits.stream()
        .filter(c -> c.subject().equals(subject))
        .sorted(Comparator.comparing(Report::weight))
        .toList();
  }

  private static Severity weight(Credit c) {
    return RuleBook.find(c.ruleId()).map(Rule::severity).orElse(Severity.CONSIDER);
  }
}
