package saddlewright.desktop.survey;

import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.PublishedRange;
import saddlewright.dentition.Tooth;
import saddlewright.desktop.Words;

/** An item that is a number; what is likely is published, what is possible the chart says. */
public final class NumberItem implements Item {
  /** Finds the value in a chart. */
  interface Finding {
    Optional<Double> in(ArchChart chart, Tooth tooth);
  }

  /** Puts a value into a chart, or takes it out. */
  interface Putting {
    ArchChart into(ArchChart chart, Tooth tooth, Optional<Double> value);
  }

  /** Why it is not asked of a tooth. */
  private static final String NOT_STANDING = "survey.not-standing";

  private final String id;
  private final String quantity;
  private final Unit unit;
  private final double least;
  private final double most;
  private final Function<Arch, String> title;
  private final Function<Tooth, String> name;
  private final Finding finding;
  private final Putting putting;
  private final BiPredicate<ArchChart, Tooth> asked;
  private final String notAsked;

  private NumberItem(
      String id,
      String quantity,
      Unit unit,
      double least,
      double most,
      Function<Arch, String> title,
      Function<Tooth, String> name,
      Finding finding,
      Putting putting,
      BiPredicate<ArchChart, Tooth> asked,
      String notAsked) {
    this.id = id;
    this.quantity = quantity;
    this.unit = unit;
    this.least = least;
    this.most = most;
    this.title = title;
    this.name = name;
    this.finding = finding;
    this.putting = putting;
    this.asked = asked;
    this.notAsked = notAsked;
  }

  /**
   * An item of a standing tooth.
   *
   * @param id stable name, under which its words stand too
   * @param quantity what was published of it, in kebab case
   * @param least the least that the chart takes
   * @param most the most that the chart takes
   */
  static NumberItem of(
      String id,
      String quantity,
      Unit unit,
      double least,
      double most,
      Finding finding,
      Putting putting) {
    return new NumberItem(
        id,
        quantity,
        unit,
        least,
        most,
        a -> Words.of("survey." + id),
        t -> Words.of("survey." + id + ".name"),
        finding,
        putting,
        ArchChart::stands,
        NOT_STANDING);
  }

  NumberItem named(Function<Arch, String> titles, Function<Tooth, String> names) {
    return new NumberItem(
        id, quantity, unit, least, most, titles, names, finding, putting, asked, notAsked);
  }

  /** The same, asked only where this holds. */
  NumberItem asked(BiPredicate<ArchChart, Tooth> where, String otherwise) {
    return new NumberItem(
        id, quantity, unit, least, most, title, name, finding, putting, where, otherwise);
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String title(Arch arch) {
    return title.apply(arch);
  }

  @Override
  public String name(Tooth tooth) {
    return name.apply(tooth);
  }

  @Override
  public String unit() {
    return unit.sign();
  }

  /** The least that the chart takes. */
  public double least() {
    return least;
  }

  /** The most that the chart takes. */
  public double most() {
    return most;
  }

  @Override
  public String rule() {
    String possible =
        Words.of(
            "survey.rule-number",
            unit.amount(Words.of("survey.from-to", NumberText.read(least), NumberText.read(most))));
    return isInHundredths() ? possible + " " + Words.of("survey.rule-hundredths") : possible;
  }

  /** Undercuts are spoken of in hundredths: "a twenty-five". */
  private boolean isInHundredths() {
    return quantity.equals("undercut");
  }

  /** What was published of it for a tooth. */
  public Optional<PublishedRange> range(Tooth tooth) {
    return PublishedRange.of(quantity, tooth);
  }

  @Override
  public Optional<String> published(Tooth tooth) {
    return range(tooth).map(r -> Likelihood.withSource(r, unit));
  }

  /** The unit with what is usual, or else what is possible, to stand behind a field. */
  public String unitAndRange(Tooth tooth) {
    double from = range(tooth).map(PublishedRange::least).orElse(least);
    double to = range(tooth).map(PublishedRange::most).orElse(most);
    return Words.of("survey.unit-range", unit.sign(), NumberText.read(from), NumberText.read(to));
  }

  @Override
  public boolean isAskedOf(ArchChart chart, Tooth tooth) {
    return asked.test(chart, tooth);
  }

  @Override
  public String notAsked(ArchChart chart, Tooth tooth) {
    return Words.of(notAsked, tooth, Words.of(chart.tooth(tooth).status()), name(tooth));
  }

  /** The value that is charted. */
  public Optional<Double> value(ArchChart chart, Tooth tooth) {
    return finding.in(chart, tooth);
  }

  /**
   * The chart with another value.
   *
   * @throws IllegalArgumentException when the chart does not take it
   */
  public ArchChart put(ArchChart chart, Tooth tooth, Optional<Double> value) {
    return putting.into(chart, tooth, value);
  }

  @Override
  public String text(ArchChart chart, Tooth tooth) {
    return value(chart, tooth).map(NumberText::show).orElse("");
  }

  /** The value with its unit, or that it is not charted. */
  public String amount(ArchChart chart, Tooth tooth) {
    return value(chart, tooth).map(this::amount).orElseGet(() -> Words.of("survey.uncharted"));
  }

  /** A value with its unit. */
  public String amount(double value) {
    return unit.amount(NumberText.show(value));
  }

  @Override
  public Optional<String> caution(ArchChart chart, Tooth tooth) {
    return value(chart, tooth).flatMap(v -> caution(tooth, v));
  }

  /** What is odd about a value. */
  public Optional<String> caution(Tooth tooth, double value) {
    // A depth of nothing says that an undercut was looked for and not found.
    if (isInHundredths() && value == 0) {
      return Optional.empty();
    }
    return range(tooth)
        .flatMap(r -> Likelihood.caution(Words.capital(name(tooth)), value, unit, r));
  }

  @Override
  public Entry enter(ArchChart chart, Tooth tooth, String text) {
    if (text.isBlank()) {
      return new Entry.Taken(put(chart, tooth, Optional.empty()), Optional.empty());
    }
    Optional<NumberText.Read> read = NumberText.read(text, unit, isInHundredths());
    if (read.isEmpty()) {
      return new Entry.Refused(Words.of("survey.not-a-number", text.strip(), rule()));
    }
    double value = read.get().value();
    try {
      return new Entry.Taken(put(chart, tooth, Optional.of(value)), read.get().remark());
    } catch (IllegalArgumentException e) {
      String slip =
          range(tooth).flatMap(r -> Likelihood.slip(value, unit, r)).map(s -> " " + s).orElse("");
      return new Entry.Refused(Words.capital(e.getMessage()) + "." + slip);
    }
  }
}
