package saddlewright.classification;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A second classifier, written on purpose without a look at the first: it writes the arch down as a
 * line of letters and reads the runs off it, in the words of the task.
 *
 * <p>"An area is a run of neighbouring missing teeth, at least one of them replaced (unreplaced
 * teeth inside the run do not split it; closed spaces are cut out of the arch first); it is
 * free-end when no counted tooth stands behind it on a side." "A standing third molar counts only
 * when it is an abutment." "Class IV only when one area crosses the midline and nothing else is to
 * be replaced."
 */
final class NaiveClassifier {
  private static final List<String> UPPER =
      List.of(
          "18", "17", "16", "15", "14", "13", "12", "11", "21", "22", "23", "24", "25", "26", "27",
          "28");
  private static final List<String> LOWER =
      List.of(
          "48", "47", "46", "45", "44", "43", "42", "41", "31", "32", "33", "34", "35", "36", "37",
          "38");
  private static final Pattern RUN = Pattern.compile("[rn|]*r[rn|]*");

  private NaiveClassifier() {}

  /** Class, modifications and areas in one line of text. */
  static String classify(
      String arch,
      Set<String> lost,
      Set<String> notReplaced,
      Set<String> abutments,
      Set<String> closed) {
    List<String> everyTooth = arch.equals("upper") ? UPPER : LOWER;
    if (lost.containsAll(everyTooth)) {
      return "edentulous 0 []";
    }

    List<String> row = new ArrayList<>(everyTooth.subList(0, 8));
    row.add("midline");
    row.addAll(everyTooth.subList(8, 16));
    row.removeIf(tooth -> lost.contains(tooth) && closed.contains(tooth));
    row.removeIf(
        tooth -> tooth.endsWith("8") && !lost.contains(tooth) && !abutments.contains(tooth));

    StringBuilder line = new StringBuilder();
    for (String tooth : row) {
      if (tooth.equals("midline")) {
        line.append('|');
      } else if (!lost.contains(tooth)) {
        line.append('s');
      } else {
        line.append(notReplaced.contains(tooth) ? 'n' : 'r');
      }
    }

    List<String> areas = new ArrayList<>();
    Set<String> freeSides = new LinkedHashSet<>();
    int crossing = 0;
    Matcher run = RUN.matcher(line);
    while (run.find()) {
      boolean freeRight = run.start() == 0;
      boolean freeLeft = run.end() == line.length();
      if (freeRight) {
        freeSides.add("right");
      }
      if (freeLeft) {
        freeSides.add("left");
      }
      boolean crosses = run.group().matches("[rn]+\\|[rn]+");
      crossing += crosses ? 1 : 0;
      List<String> teeth = new ArrayList<>(row.subList(run.start(), run.end()));
      teeth.remove("midline");
      List<String> replaced = new ArrayList<>(teeth);
      replaced.removeAll(notReplaced);
      for (String molar : List.of("8", "7")) {
        // "7s and 8s that are missing and not replaced drop out"
        String rightmost = teeth.get(0);
        if (freeRight && isOnTheRight(rightmost) && dropsOut(rightmost, molar, replaced)) {
          teeth.remove(rightmost);
        }
        String leftmost = teeth.get(teeth.size() - 1);
        if (freeLeft && !isOnTheRight(leftmost) && dropsOut(leftmost, molar, replaced)) {
          teeth.remove(leftmost);
        }
      }
      areas.add(
          teeth.get(0)
              + "-"
              + teeth.get(teeth.size() - 1)
              + replaced
              + (freeRight || freeLeft ? "free" : "bounded")
              + (crosses ? " crosses" : ""));
    }

    String kennedy;
    int modifications;
    if (areas.isEmpty()) {
      kennedy = "none";
      modifications = 0;
    } else if (freeSides.size() == 2) {
      kennedy = "I";
      modifications = areas.size() == 1 ? 0 : areas.size() - 2;
    } else if (freeSides.size() == 1) {
      kennedy = "II";
      modifications = areas.size() - 1;
    } else if (areas.size() == 1 && crossing == 1) {
      kennedy = "IV";
      modifications = 0;
    } else {
      kennedy = "III";
      modifications = areas.size() - 1;
    }
    return kennedy + " " + modifications + " " + areas;
  }

  private static boolean dropsOut(String tooth, String molar, List<String> replaced) {
    return tooth.endsWith(molar) && !replaced.contains(tooth);
  }

  private static boolean isOnTheRight(String tooth) {
    return tooth.startsWith("1") || tooth.startsWith("4");
  }
}
