package saddlewright.desktop.preferences;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.Property;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.CaseFileException;
import saddlewright.dentition.Notation;
import saddlewright.desktop.Words;
import saddlewright.desktop.inks.Colour;
import saddlewright.desktop.inks.Inks;
import saddlewright.drawing.Ink;
import saddlewright.prescription.pdf.Paper;
import saddlewright.rules.Profile;

/**
 * What the user prefers, the same in every window. A change holds at once and is written at once;
 * what cannot be read or written is said in a sentence and keeps nobody from working.
 */
public final class Preferences {
  /** The file, in the folder of the user's settings. */
  public static final String FILE = "preferences.properties";

  /** Text is at least as large as usual, and at most three times as large. */
  public static final double LEAST_TEXT = 1;

  public static final double MOST_TEXT = 3;

  /** The file in which the paper stood before there were preferences. */
  private static final String FORMER_PAPER = "printing.properties";

  private static final int LARGEST_FILE = 1 << 20;

  /** What is set on one page. */
  public enum Group {
    GENERAL,
    SCHOOL,
    INKS
  }

  private record Kept<T>(Group group, Setting<T> setting, Property<T> property) {
    String text() {
      return setting.writing().apply(property.getValue());
    }

    boolean isUsual() {
      return text().equals(setting.writing().apply(setting.usual()));
    }

    boolean read(String text) {
      Optional<T> value = setting.reading().apply(text);
      value.ifPresent(property::setValue);
      return value.isPresent();
    }

    void reset() {
      property.setValue(setting.usual());
    }
  }

  private final Optional<Path> file;
  private final Optional<MyDetails> mine;
  private final Map<String, Kept<?>> kept = new LinkedHashMap<>();
  private final DoubleProperty textSize =
      new SimpleDoubleProperty(LEAST_TEXT) {
        @Override
        public void set(double size) {
          super.set(Math.max(LEAST_TEXT, Math.min(MOST_TEXT, Math.round(size * 100) / 100.0)));
        }
      };
  private final ObjectProperty<Notation> notation = new SimpleObjectProperty<>(Notation.FDI);
  private final ObjectProperty<Paper> paper = new SimpleObjectProperty<>(Paper.A4);
  private final ObjectProperty<Appearance> appearance =
      new SimpleObjectProperty<>(Appearance.SYSTEM);
  private final BooleanProperty systemDark = new SimpleBooleanProperty(false);
  private final BooleanProperty dark = new SimpleBooleanProperty(false);
  private final BooleanProperty listShown = new SimpleBooleanProperty(false);
  private final BooleanProperty recentPrivate = new SimpleBooleanProperty(false);
  private final ObjectProperty<NewCaseSchool> school =
      new SimpleObjectProperty<>(NewCaseSchool.USUAL);
  private final ObjectProperty<SigningRole> role =
      new SimpleObjectProperty<>(SigningRole.PRESCRIBER);
  private final Map<Ink, ObjectProperty<Optional<String>>> lightInks = new EnumMap<>(Ink.class);
  private final Map<Ink, ObjectProperty<Optional<String>>> darkInks = new EnumMap<>(Ink.class);
  private final ReadOnlyObjectWrapper<Inks> inks = new ReadOnlyObjectWrapper<>(Inks.USUAL);
  private final ReadOnlyObjectWrapper<Optional<String>> trouble =
      new ReadOnlyObjectWrapper<>(Optional.empty());

  /** How many changes are being made as one; they are written when the last of them is done. */
  private int together;

  private final List<Kept<?>> changed = new ArrayList<>();

  private Preferences(Optional<Path> file) {
    this.file = file;
    this.mine = folder().map(MyDetails::new);
    keep(Group.GENERAL, Setting.number("text-size", LEAST_TEXT, LEAST_TEXT, MOST_TEXT), textSize);
    keep(Group.GENERAL, Setting.choice("appearance", Appearance.SYSTEM), appearance);
    keep(Group.GENERAL, Setting.choice("notation", Notation.FDI), notation);
    keep(Group.GENERAL, Setting.choice("paper", Paper.A4), paper);
    keep(Group.GENERAL, Setting.yesOrNo("recent-files-private", false), recentPrivate);
    keep(Group.GENERAL, Setting.yesOrNo("list-of-teeth", false), listShown);
    keep(
        Group.SCHOOL,
        new Setting<>(
            "school-of-new-cases",
            NewCaseSchool.USUAL,
            true,
            Words.of(
                "preferences.lawful-school",
                Profile.BUILT_IN.stream().map(Profile::id).collect(Collectors.joining(", "))),
            NewCaseSchool::parse,
            NewCaseSchool::text),
        school);
    keep(Group.GENERAL, Setting.choice("signing-role", SigningRole.PRESCRIBER), role);
    keepInks("light", lightInks);
    keepInks("dark", darkInks);
    appearance.addListener(o -> dark.set(isDark()));
    systemDark.addListener(o -> dark.set(isDark()));
    dark.addListener(
        (o, was, now) -> {
          // Set from outside, by a menu, it says what the desk is to be whatever the system is.
          if (now != isDark()) {
            appearance.set(now ? Appearance.DARK : Appearance.LIGHT);
          }
        });
  }

  /** The preferences kept in a folder; the usual ones where there is no file, or none to read. */
  public static Preferences in(Path folder) {
    Preferences p = new Preferences(Optional.of(folder.resolve(FILE)));
    p.readAll(folder);
    return p;
  }

  /** The usual preferences, kept nowhere. */
  public static Preferences usual() {
    return new Preferences(Optional.empty());
  }

  /**
   * Who the prescriber and the laboratory are, in a file of their own; empty where nothing is kept.
   */
  public Optional<MyDetails> mine() {
    return mine;
  }

  /** The folder of the user's settings; empty where nothing is kept. */
  public Optional<Path> folder() {
    return file.map(AtomicFile::folderOf);
  }

  private <T> void keep(Group group, Setting<T> setting, Property<T> property) {
    Kept<T> k = new Kept<>(group, setting, property);
    kept.put(setting.key(), k);
    property.addListener((o, was, now) -> changed(k));
  }

  private void keepInks(String desk, Map<Ink, ObjectProperty<Optional<String>>> by) {
    for (Ink ink : Ink.values()) {
      ObjectProperty<Optional<String>> colour = new SimpleObjectProperty<>(Optional.empty());
      by.put(ink, colour);
      keep(
          Group.INKS,
          new Setting<>(
              inkKey(desk, ink),
              Optional.empty(),
              false,
              Words.of("preferences.lawful-colour"),
              text -> Colour.parse(text).map(c -> Optional.of(c.hex())),
              c -> c.orElse("")),
          colour);
    }
  }

  private static String inkKey(String desk, Ink ink) {
    return "ink." + desk + "." + Setting.kebab(ink);
  }

  private void readAll(Path folder) {
    List<String> sentences = new ArrayList<>();
    together++;
    try {
      Optional<SettingsText> text = load();
      text.ifPresentOrElse(t -> read(t, sentences), () -> migrate(folder));
    } catch (IOException e) {
      sentences.add(Words.of("preferences.not-read", place(), String.valueOf(e.getMessage())));
    } finally {
      together--;
      changed.clear();
      mixInks();
    }
    trouble.set(sentences.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", sentences)));
  }

  private void read(SettingsText text, List<String> sentences) {
    text.broken()
        .forEach(b -> sentences.add(Words.of("preferences.broken-line", FILE, b.line(), b.text())));
    text.values()
        .forEach(
            (key, value) -> {
              Kept<?> k = kept.get(key);
              // A key that is not known belongs to another version, which will want it again.
              if (k != null && !k.read(value)) {
                sentences.add(
                    Words.of(
                        "preferences.broken-value",
                        FILE,
                        text.line(key),
                        key,
                        value,
                        k.setting().lawful()));
              }
            });
  }

  /** Takes over what an earlier version kept elsewhere; its file stays as it is. */
  private void migrate(Path folder) {
    try {
      SettingsText former =
          SettingsText.of(Files.readString(folder.resolve(FORMER_PAPER), StandardCharsets.UTF_8));
      former.value("paper").ifPresent(p -> kept.get("paper").read(p));
    } catch (IOException e) {
      // There is nothing to take over.
    }
  }

  private Optional<SettingsText> load() throws IOException {
    try {
      if (file.isEmpty()) {
        return Optional.empty();
      }
      if (Files.isRegularFile(file.get()) && Files.size(file.get()) > LARGEST_FILE) {
        throw new IOException(Words.of("preferences.too-large"));
      }
      // Bytes that are no UTF-8 spoil their own line only.
      return Optional.of(
          SettingsText.of(new String(Files.readAllBytes(file.get()), StandardCharsets.UTF_8)));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }

  private String place() {
    return file.map(Path::toString).orElse(FILE);
  }

  private void changed(Kept<?> k) {
    if (!changed.contains(k)) {
      changed.add(k);
    }
    if (together == 0) {
      done();
    }
  }

  private void done() {
    List<Kept<?>> now = List.copyOf(changed);
    changed.clear();
    mixInks();
    write(now);
  }

  /** Makes several changes as one: they are written, and their inks mixed, once. */
  public void together(Runnable changes) {
    together++;
    try {
      changes.run();
    } finally {
      together--;
      if (together == 0 && !changed.isEmpty()) {
        done();
      }
    }
  }

  private void mixInks() {
    inks.set(new Inks(chosen(lightInks), chosen(darkInks)));
  }

  private static Map<Ink, String> chosen(Map<Ink, ObjectProperty<Optional<String>>> by) {
    Map<Ink, String> out = new EnumMap<>(Ink.class);
    by.forEach((ink, colour) -> colour.get().ifPresent(c -> out.put(ink, c)));
    return out;
  }

  /**
   * Writes what has changed into the file as it now is, since another process or the user may have
   * changed something else there.
   */
  private void write(List<Kept<?>> now) {
    if (file.isEmpty() || now.isEmpty()) {
      return;
    }
    try {
      SettingsText text = load().orElseGet(() -> SettingsText.of(heading()));
      for (Kept<?> k : kept.values()) {
        String key = k.setting().key();
        if (!k.setting().always() && k.isUsual()) {
          text = now.contains(k) ? text.without(key) : text;
        } else if (now.contains(k) || text.value(key).isEmpty()) {
          text = text.with(key, k.text(), comment(k, text));
        }
      }
      Files.createDirectories(AtomicFile.folderOf(file.get()));
      AtomicFile.write(file.get(), text.toString().getBytes(StandardCharsets.UTF_8));
      trouble.set(Optional.empty());
    } catch (CaseFileException e) {
      trouble.set(Optional.of(Words.of("preferences.not-kept", e.sentences())));
    } catch (IOException e) {
      trouble.set(
          Optional.of(
              Words.of(
                  "preferences.not-kept",
                  Words.of("preferences.not-written", place(), String.valueOf(e.getMessage())))));
    }
  }

  private static String heading() {
    return "# " + Words.of("preferences.file").replace("\n", "\n# ") + "\n";
  }

  /** What stands above the line of a setting; above the first only of the inks of a desk. */
  private static List<String> comment(Kept<?> k, SettingsText text) {
    String key = k.setting().key();
    if (!key.startsWith("ink.")) {
      return List.of(
          Words.of("preferences.file." + key)
              + (k.setting().lawful().isEmpty() ? "" : ": " + k.setting().lawful()));
    }
    String desk = key.substring(0, key.lastIndexOf('.'));
    boolean first = text.values().keySet().stream().noneMatch(o -> o.startsWith(desk + "."));
    return first ? List.of(Words.of("preferences.file." + desk)) : List.of();
  }

  /** Where they are kept; empty where they are not. */
  public Optional<Path> file() {
    return file;
  }

  /** What could not be read or kept, in sentences to show; empty when nothing is wrong. */
  public ReadOnlyObjectProperty<Optional<String>> troubleProperty() {
    return trouble.getReadOnlyProperty();
  }

  /** How large text is, as a multiple of the usual size: 1 to 3. */
  public DoubleProperty textSizeProperty() {
    return textSize;
  }

  /** Whether the list of teeth and components stands beside the sheet. */
  public BooleanProperty listShownProperty() {
    return listShown;
  }

  /** How teeth are numbered. */
  public ObjectProperty<Notation> notationProperty() {
    return notation;
  }

  /** What the prescription is printed on. */
  public ObjectProperty<Paper> paperProperty() {
    return paper;
  }

  public ObjectProperty<Appearance> appearanceProperty() {
    return appearance;
  }

  /** Whether the computer's own windows are dark, as far as is known. */
  public BooleanProperty systemDarkProperty() {
    return systemDark;
  }

  /** Whether the desk is dark; setting it sets the appearance. */
  public BooleanProperty darkProperty() {
    return dark;
  }

  private boolean isDark() {
    return switch (appearance.get()) {
      case SYSTEM -> systemDark.get();
      case LIGHT -> false;
      case DARK -> true;
    };
  }

  /** Whether recent files are neither remembered nor shown. */
  public BooleanProperty recentPrivateProperty() {
    return recentPrivate;
  }

  /** The school by whose profile new cases are judged. */
  public ObjectProperty<NewCaseSchool> schoolProperty() {
    return school;
  }

  /** In what role the user signs what they waive, unless they say otherwise. */
  public ObjectProperty<SigningRole> roleProperty() {
    return role;
  }

  /** The colour chosen for an ink on the light or the dark desk; empty for the program's own. */
  public ObjectProperty<Optional<String>> inkProperty(boolean darkDesk, Ink ink) {
    return (darkDesk ? darkInks : lightInks).get(ink);
  }

  /** All colours that are chosen. */
  public ReadOnlyObjectProperty<Inks> inksProperty() {
    return inks.getReadOnlyProperty();
  }

  /** What all is set to, to be taken up again. */
  public Map<String, String> texts() {
    Map<String, String> out = new LinkedHashMap<>();
    kept.forEach((key, k) -> out.put(key, k.text()));
    return out;
  }

  /** Sets what these texts name, as {@link #texts} gave them. */
  public void take(Map<String, String> texts) {
    together(
        () ->
            texts.forEach(
                (key, text) -> {
                  Kept<?> k = kept.get(key);
                  if (k != null && !k.read(text)) {
                    k.reset();
                  }
                }));
  }

  /** Sets all of a group to the usual values. */
  public void reset(Group group) {
    together(() -> kept.values().stream().filter(k -> k.group() == group).forEach(Kept::reset));
  }

  public void resetAll() {
    together(() -> kept.values().forEach(Kept::reset));
  }

  /** Whether everything has its usual value. */
  public boolean isUsual() {
    return kept.values().stream().allMatch(Kept::isUsual);
  }
}
