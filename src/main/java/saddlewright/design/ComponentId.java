package saddlewright.design;

/** The name of a component within a case, stable over edits and saves; letters, digits, hyphens. */
public record ComponentId(String value) implements Comparable<ComponentId> {
  public ComponentId {
    if (!value.matches("[A-Za-z0-9][A-Za-z0-9_.-]{0,63}")) {
      throw new IllegalArgumentException(
          "\"" + value + "\" is no component id; use letters, digits, hyphens, at most 64");
    }
  }

  public static ComponentId of(String value) {
    return new ComponentId(value);
  }

  @Override
  public int compareTo(ComponentId o) {
    return value.compareTo(o.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
