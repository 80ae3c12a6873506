package saddlewright.archform;

import java.util.Optional;
import java.util.function.Supplier;

/** A value worked out when it is first asked for, and kept. */
public final class Once<T> implements Supplier<T> {
  private final Supplier<T> source;
  // Two threads may both work it out; they get equal values, so no lock is needed.
  private volatile Optional<T> kept = Optional.empty();

  public Once(Supplier<T> source) {
    this.source = source;
  }

  @Override
  public T get() {
    Optional<T> now = kept;
    if (now.isEmpty()) {
      now = Optional.of(source.get());
      kept = now;
    }
    return now.get();
  }
}
