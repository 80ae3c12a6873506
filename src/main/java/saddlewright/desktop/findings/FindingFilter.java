package saddlewright.desktop.findings;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** Which entries of the report are shown: kinds that are switched on, and words that they hold. */
final class FindingFilter {
  /** A kind of entry that can be switched off. */
  enum Kind {
    MUST,
    SHOULD,
    CONSIDER,
    QUESTION,
    WAIVED;

    static Kind of(ReportCard card) {
      if (card instanceof FindingCard f) {
        return f.entry().stands() ? valueOf(f.entry().finding().severity().name()) : WAIVED;
      }
      return QUESTION;
    }
  }

  private final Set<Kind> shown = EnumSet.allOf(Kind.class);
  private String text = "";

  void show(Kind kind, boolean on) {
    if (on) {
      shown.add(kind);
    } else {
      shown.remove(kind);
    }
  }

  void setText(String words) {
    text = words.strip().toLowerCase(Locale.ROOT);
  }

  /** Whether it is of a kind that is shown and holds every word that is looked for. */
  boolean keeps(ReportCard card) {
    if (!shown.contains(Kind.of(card))) {
      return false;
    }
    String words = card.words().toLowerCase(Locale.ROOT);
    for (String w : text.split("\\s+")) {
      if (!words.contains(w)) {
        return false;
      }
    }
    return true;
  }
}
