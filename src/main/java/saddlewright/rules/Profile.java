package saddlewright.rules;

/**
 * A school's thresholds, each with its source beside it.
 *
 * @param id such as "uk-teaching"
 * @param title as shown
 */
public record Profile(String id, String title) {
  public static final Profile UK_TEACHING = new Profile("uk-teaching", "UK teaching");
}
