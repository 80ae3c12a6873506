package saddlewright.casefile.json;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.CaseFileException.Kind;
import saddlewright.casefile.ProfileFile;
import saddlewright.rules.Profile;

/**
 * A school's own profile as the text of its file, and back; the format is {@code
 * docs/profile-schema.json}.
 */
public final class ProfileCodec {
  /** What a profile file says of itself in its member "format". */
  public static final String FORMAT = "saddlewright-profile";

  private static final Migrations MIGRATIONS = Migrations.NONE;
  private static final FileHeader HEADER =
      new FileHeader("school profile", FORMAT, MIGRATIONS, Kind.NOT_A_PROFILE);

  private ProfileCodec() {}

  /** The profile as JSON; a built-in one as a school's own to start from. */
  public static String toJson(ProfileFile file) {
    KeptMembers kept = new KeptMembers(file.extras());
    Profile p = file.profile().asOwn();
    return JsonText.pretty(
        MembersOut.write(
            Place.TOP,
            kept,
            top -> {
              top.text("format", FORMAT);
              top.whole("formatVersion", MIGRATIONS.current());
              ProfileFormat.write(p, top);
            }));
  }

  /**
   * The profile that the JSON holds.
   *
   * @param name name of the file, for the sentences
   * @throws CaseFileException when it is not JSON, not a profile, of a newer version, or impossible
   */
  public static ProfileFile fromJson(String json, String name) throws CaseFileException {
    return fromBytes(json.getBytes(StandardCharsets.UTF_8), name);
  }

  /** The same for the bytes of a file, which must be UTF-8. */
  public static ProfileFile fromBytes(byte[] bytes, String name) throws CaseFileException {
    try {
      if (bytes.length > CaseCodec.MAX_BYTES) {
        throw CaseCodec.tooLarge();
      }
      Map<String, String> extras = new TreeMap<>();
      Profile profile =
          MembersIn.read(
              HEADER.check(JsonText.parse(bytes)),
              Place.TOP,
              extras,
              top -> {
                top.requiredText("format");
                top.whole("formatVersion");
                return ProfileFormat.read(top);
              });
      return new ProfileFile(profile, extras);
    } catch (Refusal e) {
      throw e.in(name);
    }
  }
}
