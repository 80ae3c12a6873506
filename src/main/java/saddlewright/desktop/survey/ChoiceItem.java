package saddlewright.desktop.survey;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.stream.Collectors;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.desktop.Words;

/**
 * An item that is one of a few words.
 *
 * @param <E> what is chosen from
 */
public final class ChoiceItem<E> implements Item {
  /** Finds the choice in a chart. */
  interface Finding<E> {
    Optional<E> in(ArchChart chart, Tooth tooth);
  }

  /** Puts a choice into a chart. */
  interface Putting<E> {
    ArchChart into(ArchChart chart, Tooth tooth, Optional<E> choice);
  }

  private final String id;
  private final List<E> choices;
  private final Function<E, String> word;
  private final Finding<E> finding;
  private final Putting<E> putting;
  private final BiPredicate<ArchChart, Tooth> asked;

  /**
   * An item.
   *
   * @param id stable name, under which its words stand too
   * @param word the short word for a choice, by whose beginning it is known
   */
  ChoiceItem(
      String id,
      List<E> choices,
      Function<E, String> word,
      Finding<E> finding,
      Putting<E> putting,
      BiPredicate<ArchChart, Tooth> asked) {
    this.id = id;
    this.choices = List.copyOf(choices);
    this.word = word;
    this.finding = finding;
    this.putting = putting;
    this.asked = asked;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String title(Arch arch) {
    return Words.of("survey." + id);
  }

  @Override
  public String name(Tooth tooth) {
    return Words.of("survey." + id + ".name");
  }

  @Override
  public String unit() {
    return "";
  }

  @Override
  public String rule() {
    return Words.of("survey.rule-choice", words());
  }

  /** The words that can be chosen from. */
  public List<String> choices() {
    return choices.stream().map(word).toList();
  }

  private String words() {
    return choices.stream().map(word).collect(Collectors.joining(", "));
  }

  @Override
  public Optional<String> published(Tooth tooth) {
    return Optional.empty();
  }

  @Override
  public boolean isAskedOf(ArchChart chart, Tooth tooth) {
    return asked.test(chart, tooth);
  }

  @Override
  public String notAsked(ArchChart chart, Tooth tooth) {
    String key = chart.stands(tooth) ? "survey.only-of-gaps" : "survey.not-standing";
    return Words.of(key, tooth, Words.of(chart.tooth(tooth).status()), name(tooth));
  }

  @Override
  public String text(ArchChart chart, Tooth tooth) {
    return finding.in(chart, tooth).map(word).orElse("");
  }

  @Override
  public Optional<String> caution(ArchChart chart, Tooth tooth) {
    return Optional.empty();
  }

  @Override
  public Entry enter(ArchChart chart, Tooth tooth, String text) {
    String sought = text.strip().toLowerCase(Locale.ROOT);
    if (sought.isEmpty()) {
      return new Entry.Taken(putting.into(chart, tooth, Optional.empty()), Optional.empty());
    }
    List<E> found =
        choices.stream()
            .filter(c -> word.apply(c).toLowerCase(Locale.ROOT).startsWith(sought))
            .toList();
    Optional<E> exact =
        found.stream().filter(c -> word.apply(c).equalsIgnoreCase(sought)).findFirst();
    if (exact.isPresent() || found.size() == 1) {
      return new Entry.Taken(
          putting.into(chart, tooth, Optional.of(exact.orElseGet(() -> found.get(0)))),
          Optional.empty());
    }
    return new Entry.Refused(
        Words.of(
            found.isEmpty() ? "survey.no-such-word" : "survey.several-words",
            text.strip(),
            words()));
  }
}
