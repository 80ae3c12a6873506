package saddlewright.desktop.subject;

import java.util.List;
import saddlewright.design.Component;

/**
 * A property of a component with the values that it can take.
 *
 * @param name in words
 * @param options the values, each as the component that would have it
 * @param chosen index of the present one; -1 when it is none of them
 */
public record Attribute(String name, List<Option> options, int chosen) {
  /** A value and the component with it. */
  public record Option(String label, Component component) {
    @Override
    public String toString() {
      return label;
    }
  }
}
