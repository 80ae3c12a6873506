package saddlewright.rules;

import java.util.List;
import saddlewright.dentition.Tooth;

/** Teeth as a sentence names them: "35", "35 and 45", "35, 36 and 37". */
public final class ToothList {
  private ToothList() {}

  public static String of(List<Tooth> teeth) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < teeth.size(); i++) {
      out.append(i == 0 ? "" : i == teeth.size() - 1 ? " and " : ", ").append(teeth.get(i));
    }
    return out.toString();
  }
}
