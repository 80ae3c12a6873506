package saddlewright.desktop.tools;

import java.util.List;
import java.util.Optional;
import saddlewright.casefile.Assessment;

/** A meaning of the pointer. */
@FunctionalInterface
public interface Tool {
  /** What a click there could do, the usual first; empty where it would place nothing. */
  List<Proposal> proposals(Aim aim, Assessment now);

  /** Why a click there would place nothing; empty where there is nothing to say. */
  default Optional<Refusal> refusal(Aim aim, Assessment now) {
    return Optional.empty();
  }

  /** What is to be said beside what a click there could do; empty where nothing is. */
  default Optional<String> remark(Aim aim, Assessment now) {
    return Optional.empty();
  }

  /** Which places of a tooth it tells apart. */
  default Sites sites() {
    return Sites.TOOTH;
  }

  /** Whether dragging over further teeth does the same to them. */
  default boolean isDragged() {
    return false;
  }

  /** Whether dragging on from there would place something over all places passed. */
  default boolean isStretched(Aim from, Assessment now) {
    return false;
  }

  /** What dragging from one place to another would do. */
  default List<Proposal> stretched(Aim from, Aim to, Assessment now) {
    return List.of();
  }
}
