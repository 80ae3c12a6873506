package saddlewright.prescription.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseCodec;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.prescription.FormField;

/**
 * A character of a case that no face of the document has: on paper a square stands for it.
 *
 * @param codePoint the character
 * @param places where it is written, as the form names its fields, in the order of the form
 */
public record Unprintable(int codePoint, List<String> places) {
  private static final int MOST_NAMED = 8;

  public Unprintable {
    places = List.copyOf(places);
  }

  /**
   * Those of a case, in the order in which they come.
   *
   * @param patient whose case it is, where that is printed too
   */
  public static List<Unprintable> of(Case c, Optional<PatientIdentity> patient) {
    Map<Integer, Set<String>> found = new LinkedHashMap<>();
    Map<String, String> texts = texts(c);
    patient.ifPresent(p -> texts.put("Patient", p.toString()));
    texts.forEach(
        (place, text) ->
            text.codePoints()
                .filter(TypeFace::isMissing)
                .forEach(p -> found.computeIfAbsent(p, k -> new LinkedHashSet<>()).add(place)));
    // What stands in no field that has a name: notes, components of unknown kinds and the like.
    String rest = CaseCodec.toJson(c.withIdentity("", "", "").withExtras(Map.of()));
    rest.codePoints()
        .filter(TypeFace::isMissing)
        .forEach(p -> found.computeIfAbsent(p, k -> Set.of("Design")));
    List<Unprintable> out = new ArrayList<>();
    found.forEach((p, places) -> out.add(new Unprintable(p, List.copyOf(places))));
    return out;
  }

  /** What a person has written, by the name of the field. */
  private static Map<String, String> texts(Case c) {
    Map<String, String> out = new LinkedHashMap<>();
    out.put("Case reference", c.reference());
    out.put("Title", c.title());
    PrescriptionDetails p = c.prescription();
    p.answers().forEach((item, a) -> out.put(FormField.of(item).title(), a.text()));
    out.put("Enclosures", p.enclosures().toString());
    out.put("Disinfection", p.disinfections().toString());
    out.put("Mouth preparations", p.preparations().toString());
    out.put("Stages", p.stages().toString());
    out.put("Signature", p.signature().toString());
    out.put("Candidate number", p.coursework().candidate());
    out.put("Justifications", p.coursework().justifications().toString());
    out.put("Waivers", c.waivers().toString());
    out.put("School profile", c.profile().label() + c.profile().departures());
    return out;
  }

  /** Such as "山 U+5C71". */
  public String words() {
    return Character.toString(codePoint) + " " + number();
  }

  /** Its number as Unicode writes it. */
  String number() {
    return String.format(Locale.ROOT, "U+%04X", codePoint);
  }

  /** One sentence on all of them; for none, empty. */
  public static String sentence(List<Unprintable> all) {
    if (all.isEmpty()) {
      return "";
    }
    boolean one = all.size() == 1;
    return (one
            ? "This character cannot be printed and stands as a square: "
            : "These characters cannot be printed and stand as squares: ")
        + byPlace(all, Unprintable::words)
        + ". Write "
        + (one ? "it" : "them")
        + " in by hand.";
  }

  /** Those of the same fields together, such as "U+5C71, U+7530 in Prescriber". */
  static String byPlace(List<Unprintable> all, Function<Unprintable, String> naming) {
    Map<List<String>, List<Unprintable>> together =
        all.stream()
            .collect(
                Collectors.groupingBy(
                    Unprintable::places, LinkedHashMap::new, Collectors.toList()));
    return together.entrySet().stream()
        .map(e -> named(e.getValue(), naming) + " in " + String.join(" and ", e.getKey()))
        .collect(Collectors.joining("; "));
  }

  private static String named(List<Unprintable> some, Function<Unprintable, String> naming) {
    int more = some.size() - MOST_NAMED;
    return some.stream().limit(MOST_NAMED).map(naming).collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + " more" : "");
  }
}
