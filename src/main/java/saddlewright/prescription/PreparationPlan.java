package saddlewright.prescription;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.order.OwnPreparation;
import saddlewright.casefile.order.PreparationKind;
import saddlewright.casefile.order.PreparationMark;
import saddlewright.casefile.order.Preparations;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.dentition.Tooth;
import saddlewright.design.ComponentId;
import saddlewright.rules.Source;

/**
 * The mouth preparations as they stand: those that follow from the design joined with what has been
 * noted of them, those added by hand, and those that were noted but are no longer asked for.
 *
 * @param notation how teeth are numbered in its words
 * @param entries in clinical order
 * @param unknown marks whose preparation this version cannot name; they are kept and shown
 */
public record PreparationPlan(
    Notation notation, List<Entry> entries, List<PreparationMark> unknown) {

  /** Begins the key of the mark of an {@link OwnPreparation}. */
  public static final String OWN = "own/";

  private static final Comparator<Entry> CLINICAL_ORDER =
      Comparator.comparing(Entry::kind)
          .thenComparing(Entry::arch)
          .thenComparing(e -> e.teeth().isEmpty() ? -1 : e.teeth().get(0).place());

  public PreparationPlan {
    entries = List.copyOf(entries);
    unknown = List.copyOf(unknown);
  }

  /** Where a preparation comes from. */
  public enum Origin {
    DESIGN,
    OWN,
    /** The design asked for it when it was noted and does so no longer. */
    FORMER
  }

  /**
   * One preparation as it stands.
   *
   * @param key of its mark
   * @param teeth the teeth concerned; may be empty for a former one
   * @param surface where on the tooth; may be empty
   * @param derived the target that follows from the design, or that was written with an own one
   * @param reason why
   * @param components what asks for it
   * @param numbers callout numbers of these on the sheet
   * @param source where the sizes come from; empty for what a person wrote
   * @param mark what has been noted of it
   */
  public record Entry(
      String key,
      Origin origin,
      PreparationKind kind,
      Arch arch,
      List<Tooth> teeth,
      String surface,
      String derived,
      String reason,
      List<ComponentId> components,
      List<Integer> numbers,
      Optional<Source> source,
      List<PreparationWarning> warnings,
      PreparationMark mark,
      Notation notation) {

    /** What to aim at: a person's words where there are some. */
    public String target() {
      return isReworded() ? mark.target() : derived;
    }

    /** Whether a person's words stand in place of those that follow from the design. */
    public boolean isReworded() {
      return !mark.target().isBlank();
    }

    /** Tooth and surface, such as "35 mesial occlusal". */
    public String place() {
      String words = (ToothWords.list(teeth, notation) + " " + surface).strip();
      return words.isEmpty() ? arch.code() + " arch" : words;
    }

    /** Why, with the numbers on the sheet: "guide plate (no. 7)". */
    public String purpose() {
      if (numbers.isEmpty()) {
        return reason;
      }
      List<String> all = numbers.stream().map(n -> Integer.toString(n)).toList();
      return reason + (all.size() == 1 ? " (no. " : " (nos ") + String.join(", ", all) + ")";
    }

    /** How far it is, such as "done on 3 November 2026 by A. B.; checked by C. D.". */
    public String standing() {
      boolean checked = mark.state() == PreparationMark.State.CHECKED;
      StringBuilder out = new StringBuilder();
      if (origin == Origin.FORMER) {
        out.append("no longer asked for by the design; ");
      }
      out.append((checked ? PreparationMark.State.DONE : mark.state()).words());
      mark.on().ifPresent(day -> out.append(" on ").append(Dates.words(day)));
      if (!mark.by().isBlank()) {
        out.append(" by ").append(mark.by());
      }
      if (checked) {
        out.append("; checked");
        out.append(mark.checkedBy().isBlank() ? "" : " by " + mark.checkedBy());
      }
      return out.toString();
    }

    /** Whether tooth substance has been altered. */
    public boolean isCut() {
      return kind.altersTeeth() && isDone();
    }

    public boolean isDone() {
      return mark.state() == PreparationMark.State.DONE
          || mark.state() == PreparationMark.State.CHECKED;
    }

    /** Whether nothing more is to be done or decided: checked, or declined with the reason. */
    public boolean isSettled() {
      return mark.state() == PreparationMark.State.CHECKED
          || (mark.state() == PreparationMark.State.DECLINED && !mark.note().isBlank());
    }

    /** Whether the master impression has to wait for it. */
    public boolean isBeforeMasterImpression() {
      boolean atFitting = kind == PreparationKind.EXTRACTION && !components.isEmpty();
      return kind != PreparationKind.LATER && !atFitting && origin != Origin.FORMER;
    }

    /** What is wanting in what has been noted, a sentence each. */
    public List<String> gaps() {
      List<String> out = new ArrayList<>();
      if (mark.state() == PreparationMark.State.DECLINED && mark.note().isBlank()) {
        out.add("Declined without a reason: note why.");
      }
      if (isDone() && mark.on().isEmpty()) {
        out.add("No date: note the day on which it was done.");
      }
      if (mark.state() == PreparationMark.State.CHECKED && mark.checkedBy().isBlank()) {
        out.add("Checked, but not by whom: note who checked it.");
      }
      return out;
    }
  }

  public static PreparationPlan of(Assessment assessment, Notation notation) {
    Preparations noted = assessment.subject().prescription().preparations();
    Map<String, Integer> numbers = new HashMap<>();
    for (Schedule.Line l : Schedule.of(assessment, notation).lines()) {
      numbers.put(l.arch() + " " + l.id(), l.number());
    }
    List<Entry> entries = new ArrayList<>();
    Set<String> used = new HashSet<>();
    for (Preparation p : MouthPreparations.of(assessment)) {
      String key = p.key().text();
      used.add(key);
      entries.add(
          new Entry(
              key,
              Origin.DESIGN,
              p.kind(),
              p.arch(),
              p.teeth(),
              p.surface(),
              p.target(),
              p.reason(),
              p.components(),
              p.components().stream()
                  .map(c -> numbers.get(p.arch() + " " + c))
                  .filter(n -> n != null)
                  .toList(),
              Optional.of(p.source()),
              p.warnings(),
              noted.mark(key),
              notation));
    }
    for (OwnPreparation o : noted.own()) {
      String key = OWN + o.id();
      used.add(key);
      entries.add(own(o, key, noted.mark(key), notation));
    }
    List<PreparationMark> unknown = new ArrayList<>();
    for (PreparationMark m : noted.marks()) {
      if (!used.contains(m.key())) {
        PreparationKey.parse(m.key())
            .ifPresentOrElse(k -> entries.add(former(k, m, notation)), () -> unknown.add(m));
      }
    }
    // What follows from the design is in order already; the sort is stable and fits in the others.
    entries.sort(CLINICAL_ORDER);
    return new PreparationPlan(notation, entries, unknown);
  }

  private static Entry own(OwnPreparation o, String key, PreparationMark mark, Notation notation) {
    return new Entry(
        key,
        Origin.OWN,
        o.kind(),
        o.arch(),
        o.teeth(),
        o.surface(),
        o.target(),
        o.reason(),
        List.of(),
        List.of(),
        Optional.empty(),
        List.of(),
        mark,
        notation);
  }

  private static Entry former(PreparationKey key, PreparationMark mark, Notation notation) {
    return new Entry(
        mark.key(),
        Origin.FORMER,
        key.kind(),
        key.arch(),
        key.teeth(),
        key.surface(),
        key.demand().words(),
        "",
        List.of(),
        List.of(),
        Optional.empty(),
        List.of(),
        mark,
        notation);
  }

  public Optional<Entry> find(String key) {
    return entries.stream().filter(e -> e.key().equals(key)).findFirst();
  }

  /** Those of a kind, in order. */
  public List<Entry> of(PreparationKind kind) {
    return entries.stream().filter(e -> e.kind() == kind).toList();
  }

  /** Those for which the master impression has to wait. */
  public List<Entry> unsettled() {
    return entries.stream().filter(e -> e.isBeforeMasterImpression() && !e.isSettled()).toList();
  }

  /**
   * What is wanting in what has been noted of an entry; polishing that was done before the last
   * surface was cut is not done.
   */
  public List<String> gaps(Entry e) {
    List<String> out = new ArrayList<>(e.gaps());
    if (e.kind() == PreparationKind.FINISH && e.isDone()) {
      long open =
          entries.stream()
              .filter(
                  o ->
                      o.arch() == e.arch()
                          && o.kind().altersTeeth()
                          && o.mark().state() == PreparationMark.State.PLANNED)
              .count();
      if (open > 0) {
        out.add(
            open == 1
                ? "One surface is still to be prepared: polish again after it."
                : open + " surfaces are still to be prepared: polish again after them.");
      }
    }
    return out;
  }

  /** All warnings in order, each once; they are signed A, B, C by their place in this list. */
  public List<PreparationWarning> cautions() {
    return entries.stream().flatMap(e -> e.warnings().stream()).distinct().toList();
  }

  /** The sign of a caution by its place. */
  public static String sign(int index) {
    return String.valueOf((char) ('A' + index % 26)).repeat(index / 26 + 1);
  }

  /** The cautions of an entry by their signs, such as "caution A, C"; empty without any. */
  public String signs(Entry e) {
    List<PreparationWarning> all = cautions();
    return e.warnings().isEmpty()
        ? ""
        : "caution "
            + e.warnings().stream()
                .map(w -> sign(all.indexOf(w)))
                .distinct()
                .collect(Collectors.joining(", "));
  }

  /** The list as plain text, for the chairside. */
  public String toText() {
    StringBuilder out = new StringBuilder();
    if (entries.isEmpty() && unknown.isEmpty()) {
      return "No mouth preparations: the design asks for none.\n";
    }
    out.append("Mouth preparations, in the order in which they are done; teeth by ")
        .append(ToothWords.name(notation))
        .append(".\n");
    int n = 0;
    for (PreparationKind kind : PreparationKind.values()) {
      List<Entry> group = of(kind);
      if (!group.isEmpty()) {
        out.append('\n').append(kind.title()).append('\n');
      }
      for (Entry e : group) {
        write(e, ++n, out);
      }
    }
    List<PreparationWarning> cautions = cautions();
    if (!cautions.isEmpty()) {
      out.append("\nCautions\n");
    }
    for (int i = 0; i < cautions.size(); i++) {
      out.append(String.format(Locale.ROOT, "%3s  %s\n", sign(i), cautions.get(i).sentence()));
    }
    if (!unknown.isEmpty()) {
      out.append("\nNoted for preparations that this version does not know\n");
      unknown.forEach(
          m ->
              out.append("  ").append(m.key()).append(": ").append(m.state().words()).append('\n'));
    }
    return out.toString();
  }

  private void write(Entry e, int number, StringBuilder out) {
    out.append(String.format(Locale.ROOT, "%3d  %s: %s\n", number, e.place(), e.standing()));
    line(out, e.target() + (e.isReworded() ? " [own words]" : ""));
    if (!e.purpose().isBlank()) {
      line(out, "for: " + e.purpose());
    }
    if (!e.mark().note().isBlank()) {
      line(out, "note: " + e.mark().note());
    }
    if (!e.warnings().isEmpty()) {
      line(out, signs(e));
    }
    gaps(e).forEach(g -> line(out, "wanting: " + g));
  }

  private static void line(StringBuilder out, String words) {
    out.append("     ").append(OneLine.of(words)).append('\n');
  }
}
