package saddlewright.desktop.preferences;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.order.Item;

/**
 * Who the prescriber is and to which laboratory they send their work, kept in the user's
 * configuration folder so that it need not be written for each case.
 */
public final class MyDetails {
  /** The fields that are the same from case to case. */
  public static final List<Item> ITEMS =
      List.of(
          Item.PRESCRIBER_NAME,
          Item.PRESCRIBER_REGISTRATION,
          Item.PRACTICE,
          Item.PRESCRIBER_CONTACT,
          Item.LABORATORY_NAME,
          Item.LABORATORY_ADDRESS,
          Item.LABORATORY_REGISTRATION,
          Item.LABORATORY_ATTENTION);

  private static final String LETTERHEAD = "letterhead";
  private static final String FILE = "my-details.properties";

  private final Path file;
  private final ReadOnlyObjectWrapper<Map<Item, String>> known =
      new ReadOnlyObjectWrapper<>(Map.of());
  private final ReadOnlyObjectWrapper<Optional<Path>> letterhead =
      new ReadOnlyObjectWrapper<>(Optional.empty());

  public MyDetails(Path folder) {
    this.file = folder.resolve(FILE);
    Properties p = new Properties();
    try (var in = Files.newBufferedReader(file)) {
      p.load(in);
    } catch (IOException | IllegalArgumentException e) {
      // Nothing kept yet, or not readable: one writes it once more.
      p.clear();
    }
    letterhead.set(
        Optional.of(p.getProperty(LETTERHEAD, "").strip())
            .filter(t -> !t.isEmpty())
            .flatMap(MyDetails::path));
    keep(
        ITEMS.stream()
            .filter(i -> !p.getProperty(i.key(), "").isBlank())
            .collect(
                java.util.stream.Collectors.toMap(i -> i, i -> p.getProperty(i.key()).strip())));
  }

  private static Optional<Path> path(String text) {
    try {
      return Optional.of(Path.of(text));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private void keep(Map<Item, String> texts) {
    Map<Item, String> next = new EnumMap<>(Item.class);
    next.putAll(texts);
    known.set(Collections.unmodifiableMap(next));
  }

  /** What is kept; empty before anything has been. */
  public Map<Item, String> known() {
    return known.get();
  }

  public ReadOnlyObjectProperty<Map<Item, String>> knownProperty() {
    return known.getReadOnlyProperty();
  }

  /** Where it is kept. */
  public Path file() {
    return file;
  }

  /**
   * Keeps these in place of what was kept.
   *
   * @throws CaseFileException when they cannot be written; they are then known until the window is
   *     closed
   */
  public void remember(Map<Item, String> texts) throws CaseFileException {
    keep(texts);
    write();
  }

  /** The picture at the head of prescriptions; empty when there is none. */
  public Optional<Path> letterhead() {
    return letterhead.get();
  }

  public ReadOnlyObjectProperty<Optional<Path>> letterheadProperty() {
    return letterhead.getReadOnlyProperty();
  }

  /**
   * Keeps a picture for the head of prescriptions, or none.
   *
   * @throws CaseFileException when that cannot be written; it then holds until the window is closed
   */
  public void rememberLetterhead(Optional<Path> picture) throws CaseFileException {
    letterhead.set(picture.map(Path::toAbsolutePath));
    write();
  }

  private void write() throws CaseFileException {
    StringBuilder out = new StringBuilder();
    known()
        .forEach(
            (item, text) -> out.append(item.key()).append('=').append(escaped(text)).append('\n'));
    letterhead()
        .ifPresent(
            l -> out.append(LETTERHEAD).append('=').append(escaped(l.toString())).append('\n'));
    try {
      Files.createDirectories(AtomicFile.folderOf(file));
    } catch (IOException e) {
      // The writer says what is wrong with the folder.
    }
    AtomicFile.write(file, out.toString().getBytes(StandardCharsets.UTF_8));
  }

  /** As the format of properties has it: one line, with nothing that would end or continue it. */
  private static String escaped(String text) {
    return text.replace("\\", "\\\\").replace("\r", "").replace("\n", "\\n");
  }
}
