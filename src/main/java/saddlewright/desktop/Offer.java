package saddlewright.desktop;

import java.util.function.Consumer;

/**
 * Something that can be done at once about what a notice says.
 *
 * @param considered is told when it is thought about, by pointer or keyboard, and when no longer
 */
public record Offer(String label, Runnable action, Consumer<Boolean> considered) {
  public Offer(String label, Runnable action) {
    this(label, action, on -> {});
  }
}
