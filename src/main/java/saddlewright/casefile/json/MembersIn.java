package saddlewright.casefile.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Function;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;

/**
 * One object of a case file while it is read. Every member that is asked for counts as known; those
 * that nobody asked for are kept as they are.
 */
final class MembersIn {
  private static final String CORRECT = "Correct it and open the file again.";

  private final ObjectNode node;
  private final Place place;
  private final Map<String, String> extras;
  private final Set<String> known = new HashSet<>();

  private MembersIn(ObjectNode node, Place place, Map<String, String> extras) {
    this.node = node;
    this.place = place;
    this.extras = extras;
  }

  /**
   * What the reader makes of an object.
   *
   * @param extras receives the members that the reader did not ask for
   */
  static <T> T read(
      JsonNode node, Place place, Map<String, String> extras, Function<MembersIn, T> reader) {
    MembersIn members = of(node, place, extras);
    T result = members.apply(reader);
    members.keepTheRest();
    return result;
  }

  /** What the reader makes of some members of an object that is read in full elsewhere. */
  static <T> T peek(JsonNode node, Place place, Function<MembersIn, T> reader) {
    return of(node, place, new HashMap<>()).apply(reader);
  }

  private static MembersIn of(JsonNode node, Place place, Map<String, String> extras) {
    if (!(node instanceof ObjectNode object)) {
      throw wrongType(place, "an object in braces", node);
    }
    return new MembersIn(object, place, extras);
  }

  private <T> T apply(Function<MembersIn, T> reader) {
    try {
      return reader.apply(this);
    } catch (IllegalArgumentException e) {
      throw Refusal.at(place, e.getMessage(), CORRECT);
    }
  }

  private void keepTheRest() {
    for (Map.Entry<String, JsonNode> m : node.properties()) {
      if (!known.contains(m.getKey())) {
        NonNumbers.refuseIn(m.getValue(), place.member(m.getKey()));
        extras.put(place.member(m.getKey()).pointer(), JsonText.compact(m.getValue()));
      }
    }
  }

  Place place() {
    return place;
  }

  private Optional<JsonNode> find(String name) {
    known.add(name);
    return Optional.ofNullable(node.get(name));
  }

  private Refusal missing(String name) {
    return Refusal.at(place, "\"" + name + "\" is missing", "Add it and open the file again.");
  }

  private static Refusal wrongType(Place place, String wanted, JsonNode found) {
    String text = JsonText.compact(found);
    String shown = text.length() > 40 ? text.substring(0, 40) + "…" : text;
    return Refusal.at(place, "expected " + wanted + ", found " + shown, CORRECT);
  }

  Optional<String> text(String name) {
    return find(name)
        .map(
            n -> {
              if (!n.isTextual()) {
                throw wrongType(place.member(name), "text in quotes", n);
              }
              return n.textValue();
            });
  }

  String requiredText(String name) {
    return text(name).orElseThrow(() -> missing(name));
  }

  String textOrEmpty(String name) {
    return text(name).orElse("");
  }

  Optional<LocalDate> date(String name) {
    return text(name).map(t -> date(t, place.member(name)));
  }

  LocalDate requiredDate(String name) {
    return date(requiredText(name), place.member(name));
  }

  private static LocalDate date(String text, Place place) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw Refusal.at(
          place, "\"" + text + "\" is not a date", "Write it as year-month-day, 2026-03-31.");
    }
  }

  Optional<LocalTime> time(String name) {
    return text(name)
        .map(
            t -> {
              try {
                return LocalTime.parse(t);
              } catch (DateTimeException e) {
                throw Refusal.at(
                    place.member(name),
                    "\"" + t + "\" is not a time of day",
                    "Write it as hours:minutes, 14:30.");
              }
            });
  }

  boolean flag(String name) {
    return find(name)
        .map(
            n -> {
              if (!n.isBoolean()) {
                throw wrongType(place.member(name), "true or false", n);
              }
              return n.booleanValue();
            })
        .orElse(false);
  }

  Optional<Double> number(String name) {
    return find(name).map(n -> number(n, place.member(name)));
  }

  double requiredNumber(String name) {
    return number(name).orElseThrow(() -> missing(name));
  }

  Optional<Integer> whole(String name) {
    return find(name).map(n -> whole(n, place.member(name)));
  }

  private static double number(JsonNode n, Place place) {
    if (!n.isNumber()) {
      throw wrongType(place, "a number", n);
    }
    if (NonNumbers.is(n)) {
      throw NonNumbers.refusal(n, place);
    }
    double value = n.doubleValue();
    if (!Double.isFinite(value)) {
      throw Refusal.at(place, "the number is absurdly large", CORRECT);
    }
    return value;
  }

  private static int whole(JsonNode n, Place place) {
    if (!n.isNumber()) {
      throw wrongType(place, "a whole number", n);
    }
    double value = n.doubleValue();
    if (value != (int) value) {
      throw wrongType(place, "a whole number", n);
    }
    return (int) value;
  }

  <E extends Enum<E>> Optional<E> word(String name, Class<E> type) {
    return find(name).map(n -> word(n, place.member(name), type));
  }

  <E extends Enum<E>> E requiredWord(String name, Class<E> type) {
    return word(name, type).orElseThrow(() -> missing(name));
  }

  private static <E extends Enum<E>> E word(JsonNode n, Place place, Class<E> type) {
    if (!n.isTextual()) {
      throw wrongType(place, "one of " + Word.all(type), n);
    }
    return word(n.textValue(), place, type);
  }

  private static <E extends Enum<E>> E word(String word, Place place, Class<E> type) {
    return Word.find(type, word)
        .orElseThrow(
            () ->
                Refusal.at(
                    place,
                    "\"" + word + "\" is not known here",
                    "Use one of " + Word.all(type) + "."));
  }

  Tooth tooth(String name, Arch arch) {
    return find(name)
        .map(n -> tooth(whole(n, place.member(name)), place.member(name), arch))
        .orElseThrow(() -> missing(name));
  }

  /** The span between the teeth of the members "from" and "to". */
  Span span(Arch arch) {
    return Span.of(tooth("from", arch), tooth("to", arch));
  }

  private static Tooth tooth(int fdi, Place place, Arch arch) {
    Tooth tooth =
        Tooth.find(fdi)
            .orElseThrow(
                () -> Refusal.at(place, fdi + " is not an FDI tooth number", inArch(arch)));
    if (tooth.arch() != arch) {
      throw Refusal.at(
          place, fdi + " is not a tooth of the " + arch.code() + " arch", inArch(arch));
    }
    return tooth;
  }

  private static String inArch(Arch arch) {
    return arch == Arch.UPPER ? "Use 11–18 or 21–28." : "Use 31–38 or 41–48.";
  }

  List<Tooth> teeth(String name, Arch arch) {
    List<Tooth> out = new ArrayList<>();
    for (JsonNode n : list(name)) {
      out.add(tooth(whole(n, place.member(name)), place.member(name), arch));
    }
    return out;
  }

  /** Teeth of one arch, whichever it is. */
  List<Tooth> teeth(String name) {
    List<Tooth> out = new ArrayList<>();
    for (JsonNode n : list(name)) {
      int fdi = whole(n, place.member(name));
      out.add(
          Tooth.find(fdi)
              .orElseThrow(
                  () ->
                      Refusal.at(
                          place.member(name),
                          fdi + " is not an FDI tooth number",
                          "Use 11–18, 21–28, 31–38 or 41–48.")));
    }
    return out;
  }

  /** One text for each name, whatever the names are. */
  Map<String, String> textsByName(String name) {
    Map<String, String> out = new TreeMap<>();
    Place at = place.member(name);
    each(
        name,
        (key, value) -> {
          if (!value.isTextual()) {
            throw wrongType(at.member(key), "text in quotes", value);
          }
          out.put(key, value.textValue());
        });
    return out;
  }

  <E extends Enum<E>> List<E> words(String name, Class<E> type) {
    List<E> out = new ArrayList<>();
    for (JsonNode n : list(name)) {
      out.add(word(n, place.member(name), type));
    }
    return out;
  }

  /** The items of a list; none when it is absent. */
  List<JsonNode> list(String name) {
    return find(name)
        .map(
            n -> {
              if (!n.isArray()) {
                throw wrongType(place.member(name), "a list in square brackets", n);
              }
              List<JsonNode> items = new ArrayList<>();
              n.forEach(items::add);
              return items;
            })
        .orElse(List.of());
  }

  <T> Optional<T> object(String name, Function<MembersIn, T> reader) {
    return find(name).map(n -> read(n, place.member(name), extras, reader));
  }

  /** What is made of a member that may be text or an object. */
  <T> Optional<T> textOrObject(
      String name, Function<String, T> ofText, Function<MembersIn, T> ofObject) {
    return find(name)
        .map(
            n -> {
              if (n.isTextual()) {
                return ofText.apply(n.textValue());
              }
              if (!n.isObject()) {
                throw wrongType(place.member(name), "text in quotes or an object in braces", n);
              }
              return read(n, place.member(name), extras, ofObject);
            });
  }

  /** One object for each name, whatever the names are. */
  <T> Map<String, T> objectsByName(String name, Function<MembersIn, T> reader) {
    Map<String, T> out = new TreeMap<>();
    Place at = place.member(name);
    each(name, (key, value) -> out.put(key, read(value, at.member(key), extras, reader)));
    return out;
  }

  /** One object for each tooth that the member names by its number. */
  <T> Map<Tooth, T> objectsByTooth(String name, Arch arch, Function<MembersIn, T> reader) {
    Map<Tooth, T> out = new EnumMap<>(Tooth.class);
    each(
        name,
        (key, value) -> {
          Place at = place.item(name, key, "tooth " + key);
          out.put(tooth(key, at, arch), read(value, at, extras, reader));
        });
    return out;
  }

  /** One number for each tooth that the member names by its number. */
  Map<Tooth, Double> numbersByTooth(String name, Arch arch) {
    Map<Tooth, Double> out = new EnumMap<>(Tooth.class);
    Place at = place.member(name);
    each(
        name,
        (key, value) -> {
          Place here = at.member(key);
          out.put(tooth(key, here, arch), number(value, here));
        });
    return out;
  }

  private static Tooth tooth(String key, Place place, Arch arch) {
    // The canonical form only: "036" beside "36" would be one tooth twice.
    if (!key.matches("[0-9]{1,4}")) {
      throw Refusal.at(place, "\"" + key + "\" is not an FDI tooth number", inArch(arch));
    }
    Tooth tooth = tooth(Integer.parseInt(key), place, arch);
    if (!tooth.toString().equals(key)) {
      throw Refusal.at(place, "\"" + key + "\" is not an FDI tooth number", inArch(arch));
    }
    return tooth;
  }

  <E extends Enum<E>> Map<E, Double> numbersByWord(String name, Class<E> type) {
    Map<E, Double> out = new EnumMap<>(type);
    Place at = place.member(name);
    each(name, (key, value) -> out.put(word(key, at, type), number(value, at.member(key))));
    return out;
  }

  <E extends Enum<E>, V extends Enum<V>> Map<E, V> wordsByWord(
      String name, Class<E> type, Class<V> values) {
    Map<E, V> out = new EnumMap<>(type);
    Place at = place.member(name);
    each(name, (key, value) -> out.put(word(key, at, type), word(value, at.member(key), values)));
    return out;
  }

  <E extends Enum<E>, T> Map<E, T> objectsByWord(
      String name, Class<E> type, Function<MembersIn, T> reader) {
    Map<E, T> out = new EnumMap<>(type);
    Place at = place.member(name);
    each(
        name,
        (key, value) -> out.put(word(key, at, type), read(value, at.member(key), extras, reader)));
    return out;
  }

  private void each(String name, BiConsumer<String, JsonNode> work) {
    find(name)
        .ifPresent(
            n -> {
              if (!n.isObject()) {
                throw wrongType(place.member(name), "an object in braces", n);
              }
              n.properties().forEach(m -> work.accept(m.getKey(), m.getValue()));
            });
  }

  /** What the reader makes of an item of a list, at a place of its own. */
  <T> T item(JsonNode item, Place at, Function<MembersIn, T> reader) {
    return read(item, at, extras, reader);
  }
}
