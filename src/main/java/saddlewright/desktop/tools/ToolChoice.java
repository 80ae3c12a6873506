package saddlewright.desktop.tools;

import java.util.Optional;
import saddlewright.dentition.Arch;

/**
 * A tool as it is offered in its step.
 *
 * @param id stable name, also of its button
 * @param label words on the button
 * @param hint what to do with it, in one sentence
 * @param tool what it does
 * @param arch the only arch in which it does anything; empty for both
 */
public record ToolChoice(String id, String label, String hint, Tool tool, Optional<Arch> arch) {

  ToolChoice(String id, String label, String hint, Tool tool) {
    this(id, label, hint, tool, Optional.empty());
  }
}
