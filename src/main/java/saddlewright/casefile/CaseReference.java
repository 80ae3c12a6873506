package saddlewright.casefile;

import java.security.SecureRandom;
import java.util.random.RandomGenerator;

/**
 * Case references that tell nothing of the patient, such as {@code SW-4F7K-29QD}. They are drawn by
 * chance, so that neither an order nor a date can be read from them.
 */
public final class CaseReference {
  /** No vowels, so that no word comes out, and none of the pairs that are taken for one another. */
  static final String SIGNS = "2345789CDFGHJKMNPQRTVWXY";

  private static final String PREFIX = "SW";
  private static final int GROUPS = 2;
  private static final int SIGNS_IN_GROUP = 4;
  private static final SecureRandom CHANCE = new SecureRandom();

  private CaseReference() {}

  /** A reference that no other case has: one of about a hundred thousand million. */
  public static String fresh() {
    return drawn(CHANCE);
  }

  static String drawn(RandomGenerator chance) {
    StringBuilder out = new StringBuilder(PREFIX);
    for (int g = 0; g < GROUPS; g++) {
      out.append('-');
      for (int i = 0; i < SIGNS_IN_GROUP; i++) {
        out.append(SIGNS.charAt(chance.nextInt(SIGNS.length())));
      }
    }
    return out.toString();
  }
}
