package saddlewright.command;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.ProfileFile;
import saddlewright.casefile.json.ProfileStore;
import saddlewright.rules.Profile;

/** A school profile as the command line names it: the id of a built-in one, or a file. */
final class ProfileChoice {
  private ProfileChoice() {}

  /**
   * The profile that is meant.
   *
   * @throws ParameterException when there is neither such an id nor such a file
   * @throws CaseFileException when the file holds no lawful profile
   */
  static ProfileFile of(String idOrFile, CommandLine line) throws CaseFileException {
    Optional<Profile> builtIn = Profile.builtIn(idOrFile);
    if (builtIn.isPresent()) {
      return ProfileFile.of(builtIn.get());
    }
    Optional<Path> file = existing(idOrFile);
    if (file.isEmpty()) {
      throw new ParameterException(
          line,
          "\"" + idOrFile + "\" is neither a file nor a built-in profile (" + builtInIds() + ")");
    }
    return ProfileStore.load(file.get());
  }

  private static Optional<Path> existing(String name) {
    try {
      return Optional.of(Path.of(name)).filter(Files::exists);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  static String builtInIds() {
    return Profile.BUILT_IN.stream().map(Profile::id).collect(Collectors.joining(", "));
  }
}
