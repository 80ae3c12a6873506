package saddlewright.desktop.tools;

import java.util.List;
import saddlewright.casefile.Assessment;

/** A meaning of the pointer. */
@FunctionalInterface
public interface Tool {
  /** What a click there could do, the usual first; empty where it would place nothing. */
  List<Proposal> proposals(Aim aim, Assessment now);

  /** Whether dragging over further teeth does the same to them. */
  default boolean isDragged() {
    return false;
  }
}
