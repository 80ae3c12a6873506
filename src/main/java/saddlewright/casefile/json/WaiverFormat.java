package saddlewright.casefile.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import saddlewright.rules.Waiver;

/** The accepted findings in the file, each named by the key of its finding. */
final class WaiverFormat {
  private WaiverFormat() {}

  static List<Waiver> read(MembersIn top) {
    List<Waiver> out = new ArrayList<>();
    Map<String, Integer> seen = new HashMap<>();
    List<JsonNode> items = top.list("waivers");
    for (int i = 0; i < items.size(); i++) {
      Place byNumber = top.place().item("waivers", String.valueOf(i), "waiver no. " + (i + 1));
      String key = MembersIn.peek(items.get(i), byNumber, m -> m.requiredText("finding"));
      out.add(top.item(items.get(i), placeOf(top.place(), key, seen), WaiverFormat::readOne));
    }
    return out;
  }

  static void write(List<Waiver> waivers, MembersOut top) {
    Map<String, Integer> seen = new HashMap<>();
    top.list(
        "waivers",
        list ->
            waivers.forEach(
                w ->
                    list.accept(
                        top.item(
                            placeOf(top.place(), w.findingKey(), seen), m -> writeOne(w, m)))));
  }

  /** A second waiver of the same finding is told apart by its number. */
  private static Place placeOf(Place top, String key, Map<String, Integer> seen) {
    int nth = seen.merge(key, 1, Integer::sum);
    return top.item("waivers", nth == 1 ? key : key + "#" + nth, "waiver of \"" + key + "\"");
  }

  private static Waiver readOne(MembersIn m) {
    return new Waiver(
        m.requiredText("finding"),
        m.requiredText("reason"),
        m.textOrEmpty("role"),
        m.requiredDate("date"),
        m.textOrEmpty("facts"));
  }

  private static void writeOne(Waiver w, MembersOut m) {
    m.text("finding", w.findingKey());
    m.text("reason", w.reason());
    m.textUnlessEmpty("role", w.role());
    m.text("date", w.date().toString());
    m.textUnlessEmpty("facts", w.facts());
  }
}
