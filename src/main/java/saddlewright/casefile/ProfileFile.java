package saddlewright.casefile;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import saddlewright.rules.Profile;

/**
 * A school profile with what its file holds besides.
 *
 * @param profile the profile
 * @param extras members of the file that this version does not know, as JSON text, by JSON pointer
 */
public record ProfileFile(Profile profile, Map<String, String> extras) {
  public ProfileFile {
    extras = Collections.unmodifiableMap(new TreeMap<>(extras));
  }

  public static ProfileFile of(Profile profile) {
    return new ProfileFile(profile, Map.of());
  }
}
