package saddlewright.desktop.preferences;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.ProfileFile;
import saddlewright.casefile.json.ProfileStore;
import saddlewright.rules.Profile;

/**
 * The school by whose profile new cases are judged.
 *
 * @param builtIn id of a built-in profile; it stands in where the file cannot be read
 * @param file the school's own profile; empty to be judged by the built-in one
 */
public record NewCaseSchool(String builtIn, Optional<Path> file) {
  /** What holds until something is chosen. */
  public static final NewCaseSchool USUAL =
      new NewCaseSchool(Profile.UK_TEACHING.id(), Optional.empty());

  private static final String ENDING = ".json";

  public NewCaseSchool {
    if (Profile.builtIn(builtIn).isEmpty()) {
      throw new IllegalArgumentException("no built-in profile " + builtIn);
    }
  }

  public static NewCaseSchool of(Profile builtIn) {
    return new NewCaseSchool(builtIn.id(), Optional.empty());
  }

  public static NewCaseSchool of(Path file) {
    return new NewCaseSchool(USUAL.builtIn, Optional.of(file.toAbsolutePath().normalize()));
  }

  /** As one word: the id of a built-in profile, or the path of a file. */
  String text() {
    return file.map(Path::toString).orElse(builtIn);
  }

  /** From one word; empty where it is neither a built-in profile nor a path to a profile file. */
  static Optional<NewCaseSchool> parse(String text) {
    if (Profile.builtIn(text).isPresent()) {
      return Optional.of(new NewCaseSchool(text, Optional.empty()));
    }
    try {
      Path path = Path.of(text);
      return path.isAbsolute() && text.endsWith(ENDING) ? Optional.of(of(path)) : Optional.empty();
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  /**
   * The profile.
   *
   * @throws CaseFileException when the school's own file cannot be read
   */
  public ProfileFile profile() throws CaseFileException {
    return file.isPresent()
        ? ProfileStore.load(file.get())
        : ProfileFile.of(Profile.builtIn(builtIn).orElse(Profile.UK_TEACHING));
  }

  /**
   * The case, judged by this school.
   *
   * @throws CaseFileException when the school's own file cannot be read
   */
  public Case judge(Case c) throws CaseFileException {
    return c.withProfile(profile());
  }
}
