package saddlewright.casefile.json;

/**
 * A place in a case file.
 *
 * @param pointer JSON pointer, with components named by id and not by number
 * @param words the same for a reader, such as {@code lower › design › component "clasp-1" › tooth};
 *     empty at the top
 */
record Place(String pointer, String words) {
  static final Place TOP = new Place("", "");

  /** The member of this object that has the given name. */
  Place member(String name) {
    return step(name, name);
  }

  /** An item of the given list in this object, addressed by what names it. */
  Place item(String list, String key, String inWords) {
    return new Place(pointer + "/" + escaped(list) + "/" + escaped(key), join(inWords));
  }

  private Place step(String name, String inWords) {
    return new Place(pointer + "/" + escaped(name), join(inWords));
  }

  private String join(String next) {
    return words.isEmpty() ? next : words + " › " + next;
  }

  /** A name as a pointer spells it (RFC 6901). */
  static String escaped(String name) {
    return name.replace("~", "~0").replace("/", "~1");
  }

  static String unescaped(String step) {
    return step.replace("~1", "/").replace("~0", "~");
  }
}
