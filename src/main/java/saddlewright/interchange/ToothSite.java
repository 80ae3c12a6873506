package saddlewright.interchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;

/** Codes for the places on a crown that preparations name in words. */
final class ToothSite {
  private static final String EMBRASURE = "embrasure";

  static final List<Code> CODES = codes();

  private ToothSite() {}

  /** The code of a place in the words of the tooth; empty for words that name no such place. */
  static Optional<String> codeOf(Tooth tooth, String words) {
    Map<String, String> byWords = new LinkedHashMap<>();
    for (End e : End.values()) {
      byWords.put(ToothNames.end(e), CodeList.codeOf(e));
    }
    for (Face f : Face.values()) {
      byWords.put(ToothNames.face(tooth, f), CodeList.codeOf(f));
    }
    for (Zone z : Zone.values()) {
      byWords.put(ToothNames.zone(tooth, z), CodeList.codeOf(z));
    }
    for (RestSite s : RestSite.values()) {
      byWords.put(ToothNames.site(s), CodeList.codeOf(s));
    }
    byWords.put(EMBRASURE, EMBRASURE);
    return Optional.ofNullable(byWords.get(words));
  }

  private static List<Code> codes() {
    List<Code> out = new ArrayList<>();
    for (Enum<?>[] group :
        List.<Enum<?>[]>of(End.values(), Face.values(), Zone.values(), RestSite.values())) {
      Arrays.stream(group).map(ToothSite::spelled).forEach(out::add);
    }
    out.add(new Code(EMBRASURE, "Embrasure", "Between two teeth that stand side by side."));
    return List.copyOf(out);
  }

  private static Code spelled(Enum<?> place) {
    String word = CodeList.codeOf(place);
    String display = word.startsWith("mid-") ? word : word.replace('-', ' ');
    return Code.of(word, Character.toUpperCase(display.charAt(0)) + display.substring(1));
  }
}
