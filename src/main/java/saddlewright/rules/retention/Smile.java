package saddlewright.rules.retention;

import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.rules.Situation;

/** The teeth that show. */
final class Smile {
  private Smile() {}

  /** Charted as visible, or an upper front tooth. */
  static boolean shows(Situation s, Tooth t) {
    return s.chart().tooth(t).visible() || t.arch() == Arch.UPPER && t.isAnterior();
  }
}
