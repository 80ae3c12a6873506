package saddlewright.casefile.order;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What has been noted of mouth preparations.
 *
 * @param marks notes on preparations, each key once
 * @param own preparations added by hand, each id once
 */
public record Preparations(List<PreparationMark> marks, List<OwnPreparation> own) {
  public static final Preparations NONE = new Preparations(List.of(), List.of());

  public Preparations {
    marks = marks.stream().filter(m -> !m.isIdle()).toList();
    own = List.copyOf(own);
    Set<String> seen = new HashSet<>();
    for (PreparationMark m : marks) {
      if (!seen.add(m.key())) {
        throw new IllegalArgumentException(
            "the preparation \"" + m.key() + "\" is marked more than once");
      }
    }
    seen.clear();
    for (OwnPreparation p : own) {
      if (!seen.add(p.id())) {
        throw new IllegalArgumentException("two own preparations have the id \"" + p.id() + "\"");
      }
    }
  }

  /** The mark of a preparation; an idle one when nothing has been noted. */
  public PreparationMark mark(String key) {
    return marks.stream()
        .filter(m -> m.key().equals(key))
        .findFirst()
        .orElse(PreparationMark.planned(key));
  }

  /** With a mark in place of the one with the same key; an idle one is left out. */
  public Preparations with(PreparationMark mark) {
    List<PreparationMark> out = new ArrayList<>();
    boolean placed = false;
    for (PreparationMark m : marks) {
      boolean same = m.key().equals(mark.key());
      out.add(same ? mark : m);
      placed |= same;
    }
    if (!placed) {
      out.add(mark);
    }
    return new Preparations(out, own);
  }

  public Preparations withOwn(List<OwnPreparation> other) {
    return new Preparations(marks, other);
  }
}
