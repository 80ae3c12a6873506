package saddlewright.dentition;

import java.util.List;
import java.util.Optional;

/** A run of neighbouring tooth positions in one arch, from the patient's right to the left. */
public record Span(Tooth first, Tooth last) {
  public Span {
    if (first.arch() != last.arch()) {
      throw new IllegalArgumentException(first + " and " + last + " are not in the same arch");
    }
    if (first.place() > last.place()) {
      Tooth swap = first;
      first = last;
      last = swap;
    }
  }

  public static Span of(Tooth one, Tooth other) {
    return new Span(one, other);
  }

  public static Span of(int oneFdi, int otherFdi) {
    return new Span(Tooth.of(oneFdi), Tooth.of(otherFdi));
  }

  public static Span of(Tooth only) {
    return new Span(only, only);
  }

  public Arch arch() {
    return first.arch();
  }

  public List<Tooth> teeth() {
    return Tooth.in(arch()).subList(first.place(), last.place() + 1);
  }

  public int size() {
    return last.place() - first.place() + 1;
  }

  public boolean contains(Tooth tooth) {
    return tooth.arch() == arch()
        && tooth.place() >= first.place()
        && tooth.place() <= last.place();
  }

  public boolean overlaps(Span other) {
    return other.arch() == arch()
        && first.place() <= other.last.place()
        && other.first.place() <= last.place();
  }

  /** The position just outside the span on the patient's right; none when it ends there. */
  public Optional<Tooth> before() {
    return first.place() == 0 ? Optional.empty() : Optional.of(Tooth.at(arch(), first.place() - 1));
  }

  /** The position just outside the span on the patient's left; none when it ends there. */
  public Optional<Tooth> after() {
    return last.place() == 15 ? Optional.empty() : Optional.of(Tooth.at(arch(), last.place() + 1));
  }

  public boolean crossesMidline() {
    return first.side() != last.side();
  }

  public Span mirrored() {
    return new Span(first.mirrored(), last.mirrored());
  }

  /** Such as 36–38, or 36 alone. */
  @Override
  public String toString() {
    return first == last ? first.toString() : first + "–" + last;
  }
}
