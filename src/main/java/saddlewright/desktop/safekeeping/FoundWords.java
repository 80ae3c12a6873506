package saddlewright.desktop.safekeeping;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.Optional;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.Case;
import saddlewright.desktop.Words;

/** What is said of found work: which case, which file, and how far it had come. */
final class FoundWords {
  private FoundWords() {}

  /** The title of the case, or its reference; never who the patient is. */
  static String name(FoundWork w) {
    return w.copy()
        .map(RecoveryCopy::subject)
        .map(c -> c.title().isBlank() ? c.reference() : c.title())
        .orElseGet(() -> AtomicFile.nameOf(w.entry()));
  }

  /** The reference, unless it is the name. */
  static Optional<String> reference(FoundWork w) {
    return w.copy()
        .map(RecoveryCopy::subject)
        .filter(c -> !c.title().isBlank())
        .map(Case::reference);
  }

  static String place(FoundWork w) {
    Optional<Path> file = w.copy().flatMap(RecoveryCopy::file);
    return file.map(f -> Words.of("safe.found-file", AtomicFile.nameOf(f), AtomicFile.folderOf(f)))
        .orElseGet(() -> Words.of("safe.found-no-file"));
  }

  static String last(FoundWork w, ZonedDateTime now) {
    if (w.copy().isEmpty()) {
      return w.trouble().orElse("");
    }
    RecoveryCopy c = w.copy().get();
    String when = Moment.inWords(c.at(), now);
    return c.edit().isBlank()
        ? Words.of("safe.found-last", when)
        : Words.of("safe.found-last-named", when, c.edit());
  }

  /** What has become of the user's file meanwhile; empty when nothing has. */
  static Optional<String> disk(FoundWork w, ZonedDateTime now) {
    return switch (w.disk()) {
      case NONE, SAME -> Optional.empty();
      case CHANGED ->
          Optional.of(
              w.diskChanged()
                  .map(t -> Words.of("safe.found-changed", Moment.inWords(t, now)))
                  .orElseGet(() -> Words.of("safe.found-changed-then")));
      case GONE -> Optional.of(Words.of("safe.found-gone"));
    };
  }
}
