package saddlewright.desktop.panels;

import java.util.ArrayList;
import java.util.List;
import saddlewright.casefile.ProfileFile;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.rules.Profile;

/** The school profiles among which a case can be judged: the built-in ones and its own. */
public final class SchoolChoice {
  private SchoolChoice() {}

  /** The built-in profiles, then the case's own, or that from which it was last changed. */
  public static List<Profile> options(Worktable table) {
    List<Profile> out = new ArrayList<>(Profile.BUILT_IN);
    Profile now = table.current().profile();
    if (now.standing() == Profile.Standing.UNKNOWN) {
      out.add(now);
    }
    table.ownSchool().map(ProfileFile::profile).ifPresent(out::add);
    return List.copyOf(out);
  }

  /** A short name: of a built-in one its title, of others with the version. */
  public static String name(Profile p) {
    return p.standing() == Profile.Standing.BUILT_IN ? p.title() : p.label();
  }

  /** Has the case judged by another profile, at once; undo names it. */
  public static void take(Worktable table, Profile p) {
    ProfileFile file =
        table.ownSchool().filter(f -> f.profile().equals(p)).orElse(ProfileFile.of(p));
    table.apply(Words.of("edit.school", p.title()), table.current().withProfile(file));
  }
}
