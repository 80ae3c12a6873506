package saddlewright.desktop.desks;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;

/** What windows are called, so that one is told from another. */
public final class DeskNames {
  private DeskNames() {}

  /** The name of what lies on a desk: its file, its title, or that it is new. */
  public static String of(Worktable table) {
    if (!table.openProperty().get()) {
      return Words.of("window.welcome");
    }
    return table
        .fileProperty()
        .get()
        .map(p -> p.getFileName().toString())
        .orElseGet(
            () ->
                table.current().title().isBlank()
                    ? Words.of("title.untitled")
                    : table.current().title());
  }

  /** The names of all desks in order; those that are alike are told apart by folder or number. */
  public static List<String> of(List<Worktable> desks) {
    List<String> plain = desks.stream().map(DeskNames::of).toList();
    List<String> placed =
        desks.stream().map(t -> isAlone(of(t), plain) ? of(t) : inItsFolder(t)).toList();
    return java.util.stream.IntStream.range(0, placed.size())
        .mapToObj(
            i -> {
              String name = placed.get(i);
              long before = placed.subList(0, i).stream().filter(name::equals).count();
              return isAlone(name, placed) ? name : name + " (" + (before + 1) + ")";
            })
        .collect(Collectors.toList());
  }

  private static boolean isAlone(String name, List<String> names) {
    return names.stream().filter(name::equals).count() == 1;
  }

  private static String inItsFolder(Worktable table) {
    Optional<String> folder = table.fileProperty().get().map(RecentFiles::folderInWords);
    return of(table) + folder.map(f -> " – " + f).orElse("");
  }
}
