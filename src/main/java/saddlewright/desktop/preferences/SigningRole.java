package saddlewright.desktop.preferences;

import java.util.Locale;
import saddlewright.desktop.Words;

/** In what role the user signs what they waive, unless they say otherwise. */
public enum SigningRole {
  PRESCRIBER,
  TUTOR,
  STUDENT,
  TECHNICIAN;

  /** The role as it stands in a waiver. */
  public String words() {
    return Words.of("role." + name().toLowerCase(Locale.ROOT));
  }
}
