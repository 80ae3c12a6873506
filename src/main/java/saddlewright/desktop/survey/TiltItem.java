package saddlewright.desktop.survey;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import saddlewright.chart.ArchChart;
import saddlewright.chart.Tilt;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.desktop.Words;

/** The way in which a tooth leans and by how much, written together: "mesial 15". */
public final class TiltItem implements Item {
  private static final Pattern WAY_FIRST = Pattern.compile("(\\p{L}+)\\s*([\\d.,].*)?");
  private static final Pattern DEGREES_FIRST = Pattern.compile("([\\d.,]+)\\s*°?\\s*(\\p{L}+)");

  @Override
  public String id() {
    return "tooth-tilt";
  }

  @Override
  public String title(Arch arch) {
    return Words.of("survey.tooth-tilt");
  }

  @Override
  public String name(Tooth tooth) {
    return Words.of("survey.tooth-tilt.name");
  }

  @Override
  public String unit() {
    return Unit.DEGREES.sign();
  }

  @Override
  public String rule() {
    return Words.of("survey.rule-tilt");
  }

  @Override
  public Optional<String> published(Tooth tooth) {
    return Items.TILT_DEGREES.published(tooth);
  }

  @Override
  public boolean isAskedOf(ArchChart chart, Tooth tooth) {
    return chart.stands(tooth);
  }

  @Override
  public String notAsked(ArchChart chart, Tooth tooth) {
    return Items.TILT_DEGREES.notAsked(chart, tooth);
  }

  @Override
  public String text(ArchChart chart, Tooth tooth) {
    String way = chart.tooth(tooth).tilt().map(TiltItem::word).orElse("");
    return (way + " " + Items.TILT_DEGREES.text(chart, tooth)).strip();
  }

  /** The word for a way of leaning, in small letters. */
  public static String word(Tilt tilt) {
    return Words.of(tilt).toLowerCase(Locale.ROOT);
  }

  @Override
  public Optional<String> caution(ArchChart chart, Tooth tooth) {
    return Items.TILT_DEGREES.caution(chart, tooth);
  }

  @Override
  public Entry enter(ArchChart chart, Tooth tooth, String text) {
    String sought = text.strip().toLowerCase(Locale.ROOT);
    if (sought.isEmpty() || sought.equals("0")) {
      return new Entry.Taken(put(chart, tooth, Optional.empty(), Optional.empty()), none());
    }
    Matcher m = WAY_FIRST.matcher(sought);
    Matcher d = DEGREES_FIRST.matcher(sought);
    if (m.matches()) {
      return lean(chart, tooth, text, m.group(1), Optional.ofNullable(m.group(2)));
    }
    if (d.matches()) {
      return lean(chart, tooth, text, d.group(2), Optional.of(d.group(1)));
    }
    return new Entry.Refused(Words.of("survey.not-a-tilt", text.strip(), rule()));
  }

  private Entry lean(
      ArchChart chart, Tooth tooth, String text, String way, Optional<String> degrees) {
    List<Tilt> found = Arrays.stream(Tilt.values()).filter(t -> word(t).startsWith(way)).toList();
    if (found.size() != 1) {
      return new Entry.Refused(Words.of("survey.not-a-tilt", text.strip(), rule()));
    }
    ArchChart leaning = put(chart, tooth, Optional.of(found.get(0)), Optional.empty());
    return degrees
        .map(d -> Items.TILT_DEGREES.enter(leaning, tooth, d))
        .orElseGet(() -> new Entry.Taken(leaning, none()));
  }

  private static Optional<String> none() {
    return Optional.empty();
  }

  /** The chart with the tooth leaning so. */
  public static ArchChart put(
      ArchChart chart, Tooth tooth, Optional<Tilt> way, Optional<Double> degrees) {
    return chart.with(tooth, chart.tooth(tooth).withTilt(way, degrees));
  }
}
