package saddlewright.rules.abutments;

import saddlewright.design.DesignEdit;

/** The edit that takes every rest and clasp off a tooth. */
final class Unburdened {
  private Unburdened() {}

  static DesignEdit of(Burden b) {
    return new DesignEdit.Several(
        b.parts().stream().<DesignEdit>map(c -> new DesignEdit.Remove(c.id())).toList());
  }
}
