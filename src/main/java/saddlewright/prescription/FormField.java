package saddlewright.prescription;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import saddlewright.casefile.order.DocumentKind;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.casefile.order.Regime;
import saddlewright.dentition.DataTable;

/**
 * A field of the form, of the thirty-four that a laboratory prescription has; some of them have
 * parts, which share a number.
 *
 * @param number from 1 to 34
 * @param key tells the parts apart, such as {@code tooth-shade}
 * @param title what it is called
 * @param section where it stands
 * @param usual answers that are often given; may be empty
 * @param hint a word of advice; may be empty
 * @param source why it is asked for
 * @param item the answer that it shows; empty for what is derived or kept in a list
 */
public record FormField(
    int number,
    String key,
    String title,
    FormSection section,
    List<String> usual,
    String hint,
    String source,
    Optional<Item> item,
    Map<Regime, Level> levels,
    Level onCoursework) {

  /** All fields, in the order of the form. */
  public static final List<FormField> ALL =
      DataTable.rows("prescription-fields").stream().map(FormField::of).toList();

  private static final Map<String, FormField> BY_KEY =
      ALL.stream().collect(Collectors.toMap(FormField::key, Function.identity()));

  public FormField {
    usual = List.copyOf(usual);
    levels = Map.copyOf(levels);
  }

  private static FormField of(Map<String, String> row) {
    String key = row.get("key");
    Map<Regime, Level> levels = new EnumMap<>(Regime.class);
    for (Regime r : Regime.values()) {
      levels.put(r, Level.of(row.get(r.name().toLowerCase(Locale.ROOT))));
    }
    String usual = row.get("usual");
    return new FormField(
        Integer.parseInt(row.get("number")),
        key,
        row.get("title"),
        FormSection.valueOf(row.get("section").toUpperCase(Locale.ROOT)),
        usual.isEmpty() ? List.of() : List.of(usual.split("\\|")),
        row.get("hint"),
        row.get("source"),
        Arrays.stream(Item.values()).filter(i -> i.key().equals(key)).findFirst(),
        levels,
        Level.of(row.get("coursework")));
  }

  /** The field of a key of the table. */
  public static FormField of(String key) {
    return Optional.ofNullable(BY_KEY.get(key))
        .orElseThrow(() -> new IllegalArgumentException("no field \"" + key + "\""));
  }

  public static FormField of(Item item) {
    return of(item.key());
  }

  /** How strongly it is asked for on the document that is being written. */
  public Level level(PrescriptionDetails p) {
    return p.kind() == DocumentKind.COURSEWORK ? onCoursework : levels.get(p.regime());
  }
}
