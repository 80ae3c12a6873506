package saddlewright.desktop.safekeeping;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * Work that was not saved when the program that did it ended.
 *
 * @param entry the file of its recovery copy
 * @param copy what it holds; empty where it cannot be read
 * @param trouble why it cannot be read, in sentences
 * @param disk how the user's file stands to it now
 * @param diskChanged when the user's file was written last
 */
public record FoundWork(
    Path entry,
    Optional<RecoveryCopy> copy,
    Optional<String> trouble,
    Disk disk,
    Optional<Instant> diskChanged) {
  /** How the file of a case stands to what was known of it. */
  public enum Disk {
    /** There never was a file. */
    NONE,
    /** It holds what it held. */
    SAME,
    /** It holds something else. */
    CHANGED,
    /** It is no longer there, or cannot be read. */
    GONE
  }

  /** When it was edited last. */
  Instant at() {
    return copy.map(RecoveryCopy::at).orElse(Instant.MIN);
  }
}
