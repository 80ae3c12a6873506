package saddlewright.dentition;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was published of a quantity that is measured on a tooth or beside it.
 *
 * @param quantity what is measured, in kebab case
 * @param mean the mean, where one is given
 * @param deviation its standard deviation, where one is given
 * @param least the smallest value that is likely
 * @param most the greatest value that is likely
 * @param evidence how far the numbers were checked
 * @param source where they stand
 */
public record PublishedRange(
    String quantity,
    Optional<Double> mean,
    Optional<Double> deviation,
    double least,
    double most,
    String evidence,
    String source) {

  private static final String ANY_TOOTH = "*";
  private static final String DATASET = "Woelfel";
  private static final String WIDTH = "crown-width";
  private static final String DEPTH = "crown-depth";
  private static final String HEIGHT = "crown-height";

  private record Key(String quantity, String tooth) {}

  private static final Map<Key, PublishedRange> ALL = read();

  public PublishedRange {
    if (!(least < most)) {
      throw new IllegalArgumentException(
          quantity + ": the range from " + least + " to " + most + " is empty");
    }
  }

  /** What was published of a quantity for this tooth; empty where nothing was. */
  public static Optional<PublishedRange> of(String quantity, Tooth tooth) {
    PublishedRange own = ALL.get(new Key(quantity, tooth.key()));
    return Optional.ofNullable(own != null ? own : ALL.get(new Key(quantity, ANY_TOOTH)));
  }

  public boolean holds(double value) {
    return value >= least && value <= most;
  }

  private static Map<Key, PublishedRange> read() {
    Map<Key, PublishedRange> out = new HashMap<>();
    for (Map<String, String> r : DataTable.rows("tooth-dimensions")) {
      if (r.get("dataset").startsWith(DATASET)) {
        crown(out, r, HEIGHT, "crown_len_mm", "crown_range");
        crown(out, r, WIDTH, "md_mm", "md_range");
        crown(out, r, DEPTH, "bl_mm", "bl_range");
      }
    }
    for (Map<String, String> r : DataTable.rows("survey-ranges")) {
      out.put(
          new Key(r.get("quantity"), r.get("tooth_key")),
          new PublishedRange(
              r.get("quantity"),
              number(r.get("mean")),
              number(r.get("sd")),
              Double.parseDouble(r.get("least")),
              Double.parseDouble(r.get("most")),
              r.get("evidence"),
              r.get("source")));
    }
    return out;
  }

  private static void crown(
      Map<Key, PublishedRange> out,
      Map<String, String> row,
      String quantity,
      String mean,
      String range) {
    List<String> ends = List.of(row.get(range).split("-"));
    out.put(
        new Key(quantity, row.get("key")),
        new PublishedRange(
            quantity,
            number(row.get(mean)),
            Optional.empty(),
            Double.parseDouble(ends.get(0)),
            Double.parseDouble(ends.get(1)),
            row.get("evidence"),
            row.get("source")));
  }

  private static Optional<Double> number(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(Double.valueOf(text));
  }
}
