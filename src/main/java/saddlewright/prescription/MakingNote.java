package saddlewright.prescription;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import saddlewright.casefile.Assessment;
import saddlewright.dentition.Arch;
import saddlewright.dentition.DataTable;
import saddlewright.design.Component;
import saddlewright.rules.Source;

/**
 * A size or shape that the bench holds to for a kind of component unless the schedule says
 * otherwise: what a technician would otherwise have to telephone about.
 *
 * @param title the kind, such as "Guide plates"
 * @param words what holds for it
 * @param source where the figures come from
 * @param numbers the numbers of the components that it holds for; empty for all
 */
public record MakingNote(String title, String words, Source source, List<Integer> numbers) {
  private static final String FOR_ALL = "all";

  private static final Map<String, Map<String, String>> ROWS = rows();

  public MakingNote {
    numbers = List.copyOf(numbers);
  }

  /** Those that a design of a case calls for, in the order of the table. */
  public static List<MakingNote> of(Assessment assessment, Schedule schedule) {
    Map<String, List<Integer>> numbers = new LinkedHashMap<>();
    ROWS.keySet().forEach(k -> numbers.put(k, new ArrayList<>()));
    for (Arch arch : Arch.values()) {
      for (Component c : assessment.arch(arch).design().components()) {
        c.accept(MakingKeys.OF)
            .forEach(
                key ->
                    schedule
                        .find(arch, c.id())
                        .ifPresent(line -> numbers.get(key).add(line.number())));
      }
    }
    List<MakingNote> out = new ArrayList<>();
    if (!schedule.lines().isEmpty()) {
      numbers.forEach(
          (key, of) -> {
            if (!of.isEmpty() || key.equals(FOR_ALL)) {
              out.add(note(ROWS.get(key), of.stream().sorted().toList()));
            }
          });
    }
    return List.copyOf(out);
  }

  private static MakingNote note(Map<String, String> row, List<Integer> numbers) {
    Source source =
        row.get("evidence").equals("read")
            ? Source.read(row.get("source"))
            : Source.commonPractice(row.get("source"));
    return new MakingNote(row.get("title"), row.get("words"), source, numbers);
  }

  private static Map<String, Map<String, String>> rows() {
    Map<String, Map<String, String>> out = new LinkedHashMap<>();
    DataTable.rows("making-sizes").forEach(r -> out.put(r.get("key"), r));
    return out;
  }
}
