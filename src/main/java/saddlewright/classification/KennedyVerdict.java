package saddlewright.classification;

/**
 * A Kennedy class with the number of its modifications.
 *
 * @param kennedy the class, or why there is none
 * @param modifications edentulous areas besides those that make the class; 0 where there is no
 *     class
 */
public record KennedyVerdict(KennedyClass kennedy, int modifications) {

  static final KennedyVerdict NONE = new KennedyVerdict(KennedyClass.NONE, 0);
  static final KennedyVerdict EDENTULOUS = new KennedyVerdict(KennedyClass.EDENTULOUS, 0);

  /** Such as "Kennedy Class II modification 1", or why there is none. */
  public String label() {
    return switch (kennedy) {
      case NONE -> "no class: nothing to replace";
      case EDENTULOUS -> "no class: edentulous arch (complete denture)";
      default ->
          modifications == 0
              ? "Kennedy Class " + kennedy.word()
              : "Kennedy Class " + kennedy.word() + " modification " + modifications;
    };
  }
}
