package saddlewright.desktop.actions;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Finds actions by parts of their names, the likeliest first. */
public final class ActionSearch {
  private static final int NONE = -1;

  private record Hit(Action action, int worth, int order) {}

  private ActionSearch() {}

  /**
   * The actions whose names and menus hold every word that is sought, in any order; words at the
   * beginning of a name count most, then beginnings of its words, then places inside, then its
   * menus. What cannot be done now comes last.
   */
  public static List<Action> find(List<Action> actions, String sought) {
    List<String> words = words(sought);
    List<Hit> hits = new ArrayList<>();
    for (int i = 0; i < actions.size(); i++) {
      int worth = worth(actions.get(i), words);
      if (worth != NONE) {
        hits.add(new Hit(actions.get(i), worth, i));
      }
    }
    hits.sort(
        Comparator.comparing((Hit h) -> !h.action().ready())
            .thenComparing(Comparator.comparingInt(Hit::worth).reversed())
            .thenComparingInt(Hit::order));
    return hits.stream().map(Hit::action).toList();
  }

  private static int worth(Action action, List<String> sought) {
    String name = folded(action.name());
    String place = folded(action.place());
    int sum = 0;
    for (String word : sought) {
      int one = worth(name, place, word);
      if (one == NONE) {
        return NONE;
      }
      sum += one;
    }
    return sum;
  }

  private static int worth(String name, String place, String word) {
    if (name.startsWith(word)) {
      return 8;
    }
    if (words(name).stream().anyMatch(w -> w.startsWith(word))) {
      return 5;
    }
    if (name.contains(word)) {
      return 2;
    }
    return words(place).stream().anyMatch(w -> w.startsWith(word)) ? 1 : NONE;
  }

  private static List<String> words(String text) {
    List<String> out = new ArrayList<>();
    for (String w : folded(text).split("[^\\p{L}\\p{N}]+")) {
      if (!w.isEmpty()) {
        out.add(w);
      }
    }
    return out;
  }

  /** In small letters and without accents. */
  private static String folded(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFD)
        .replaceAll("\\p{M}", "")
        .toLowerCase(Locale.ROOT);
  }
}
