package saddlewright.desktop.templates;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseEnding;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.json.CaseCodec;
import saddlewright.casefile.json.CaseStore;
import saddlewright.desktop.Words;

/** The templates that come with the program, and the user's own in the settings folder. */
public final class Templates {
  private static final String RESOURCES = "/saddlewright/templates/";

  /** What is found, with a sentence for each file that cannot be read. */
  public record Found(List<Template> templates, List<String> troubles) {}

  private static Optional<List<Template>> read = Optional.empty();

  private final Path folder;

  public Templates(Path settings) {
    this.folder = settings.resolve("templates");
  }

  /** Where the user's own are kept. */
  public Path folder() {
    return folder;
  }

  /** All: the user's own by name, then those of the program in the order of their index. */
  public Found all() {
    Found own = own();
    List<Template> out = new ArrayList<>(own.templates());
    out.addAll(builtIn());
    return new Found(out, own.troubles());
  }

  /** Those that come with the program, read once. */
  public static synchronized List<Template> builtIn() {
    if (read.isEmpty()) {
      read = Optional.of(List.copyOf(readBuiltIn()));
    }
    return read.get();
  }

  private static List<Template> readBuiltIn() {
    List<Template> out = new ArrayList<>();
    for (String line : resource("index.txt").lines().toList()) {
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      String[] cells = line.split(";", 2);
      try {
        Case c =
            CaseCodec.fromBytes(
                resource(cells[0].strip()).getBytes(StandardCharsets.UTF_8), cells[0]);
        out.add(new Template(c, cells[1].strip(), Optional.empty()));
      } catch (CaseFileException e) {
        throw new IllegalStateException("template " + cells[0] + " is damaged", e);
      }
    }
    return out;
  }

  private static String resource(String name) {
    try (InputStream in = Templates.class.getResourceAsStream(RESOURCES + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException("template " + name + " is missing", e);
    }
  }

  private Found own() {
    List<Template> out = new ArrayList<>();
    List<String> troubles = new ArrayList<>();
    if (Files.isDirectory(folder)) {
      try (Stream<Path> files = Files.list(folder)) {
        for (Path f : files.filter(p -> CaseEnding.isOn(p.toString())).sorted().toList()) {
          try {
            out.add(new Template(CaseStore.load(f), "", Optional.of(f)));
          } catch (CaseFileException e) {
            troubles.add(e.sentences());
          }
        }
      } catch (IOException e) {
        troubles.add(Words.of("templates.not-listed", folder, String.valueOf(e.getMessage())));
      }
    }
    out.sort((a, b) -> a.name().compareToIgnoreCase(b.name()));
    return new Found(out, troubles);
  }

  /**
   * Keeps charts and designs of a case as a template, without its patient.
   *
   * @throws CaseFileException when it cannot be written
   */
  public Template save(Case c, String name, String words) throws CaseFileException {
    make();
    Path file = freeFile(name);
    Case template = Beginning.template(c, name.strip(), words.strip());
    CaseStore.save(template, file);
    return new Template(template, "", Optional.of(file));
  }

  /** Gives one of the user's own another name; its file stays. */
  public void rename(Template own, String name) throws CaseFileException {
    Case c = own.subject();
    CaseStore.save(
        c.withIdentity(c.reference(), name.strip(), c.story()), own.file().orElseThrow());
  }

  /**
   * Removes one of the user's own.
   *
   * @throws IOException when its file stays
   */
  public void remove(Template own) throws IOException {
    Files.deleteIfExists(own.file().orElseThrow());
  }

  /** Puts one back that has been removed. */
  public void putBack(Template own) throws CaseFileException {
    make();
    CaseStore.save(own.subject(), own.file().orElseThrow());
  }

  private void make() {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      // The writer says what is wrong with the folder.
    }
  }

  private Path freeFile(String name) {
    String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    plain = plain.replaceAll("^-|-$", "");
    String stem = plain.isEmpty() ? "template" : plain.substring(0, Math.min(48, plain.length()));
    for (int n = 1; ; n++) {
      Path file = folder.resolve(stem + (n == 1 ? "" : "-" + n) + CaseEnding.OWN);
      if (!Files.exists(file)) {
        return file;
      }
    }
  }
}
