package saddlewright.desktop.help;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import saddlewright.dentition.DataTable;

/**
 * A library, font or profile of others that comes with the program.
 *
 * @param artifacts names of its files without their versions; of a resource its path
 * @param name what it is called
 * @param use what the program uses it for
 * @param licence the name of its licence
 * @param address where the licence can be read
 * @param text the resource with the text of the licence; empty where only the address is given
 */
public record Dependency(
    List<String> artifacts,
    String name,
    String use,
    String licence,
    String address,
    Optional<String> text) {
  public static final List<Dependency> ALL =
      DataTable.rows("dependencies").stream().map(Dependency::of).toList();

  public Dependency {
    artifacts = List.copyOf(artifacts);
  }

  private static Dependency of(Map<String, String> row) {
    return new Dependency(
        List.of(row.get("artifacts").split(" ")),
        row.get("name"),
        row.get("use"),
        row.get("licence"),
        row.get("address"),
        Optional.of(row.get("text")).filter(t -> !t.isEmpty()));
  }
}
