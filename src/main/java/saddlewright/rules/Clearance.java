package saddlewright.rules;

/** How finely clearances are read off the sampled curves of the layout. */
public final class Clearance {
  /** Curves are sampled every 0.25 mm; a clearance short by less than this is not short. */
  public static final double MEASURING_ERROR_MM = 0.05;

  private Clearance() {}
}
