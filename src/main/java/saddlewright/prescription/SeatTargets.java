package saddlewright.prescription;

import java.math.BigDecimal;
import java.math.RoundingMode;
import saddlewright.dentition.RestSite;
import saddlewright.design.Rest;
import saddlewright.rules.Profile;
import saddlewright.rules.Quantity;
import saddlewright.rules.Source;

/** What to aim at on a tooth, in words, with the sizes that a school teaches. */
final class SeatTargets {
  private final Profile school;

  SeatTargets(Profile school) {
    this.school = school;
  }

  /** Who gives the sizes of the seat of a rest. */
  Source source(Rest rest) {
    Quantity q =
        rest.form() == Rest.Form.EMBRASURE
            ? Quantity.EMBRASURE_ROOM
            : rest.site() == RestSite.CINGULUM
                ? Quantity.CINGULUM_SEAT_WIDTH
                : rest.site().isIncisal() ? Quantity.INCISAL_SEAT_WIDTH : Quantity.SEAT_DEPTH;
    return school.source(q);
  }

  /**
   * What to cut, or to build, for a rest.
   *
   * @param inCrown the tooth bears a crown, into which the seat is built
   */
  String seat(Rest rest, boolean inCrown) {
    boolean composite = rest.seat() == Rest.Seat.COMPOSITE;
    String act = inCrown ? "build into the crown" : composite ? "build" : "cut";
    String seat =
        rest.site() == RestSite.CINGULUM
            ? cingulum(act, composite && !inCrown)
            : rest.site().isIncisal() ? incisal(act) : occlusal(act, rest.form());
    return rest.seat() == Rest.Seat.RESTORATION && !inCrown
        ? seat + ", within the restoration"
        : seat;
  }

  private String cingulum(String act, boolean composite) {
    String size =
        mm(Quantity.CINGULUM_SEAT_WIDTH)
            + " wide, "
            + mm(Quantity.CINGULUM_SEAT_REACH)
            + " front to back";
    return composite
        ? "build a composite ledge at least "
            + size
            + ", its floor at right angles to the long axis"
        : act
            + " an inverted V at least "
            + size
            + ", "
            + mm(Quantity.CINGULUM_SEAT_DEPTH)
            + " deep; stop short of dentine";
  }

  private String incisal(String act) {
    return act
        + " a rounded notch "
        + mm(Quantity.INCISAL_SEAT_WIDTH)
        + " wide and "
        + mm(Quantity.INCISAL_SEAT_DEPTH)
        + " deep";
  }

  private String occlusal(String act, Rest.Form form) {
    String extent =
        switch (form) {
          case EXTENDED -> ", carried past the centre of the tooth";
          case DOUBLE -> ", carried through the fissure to the other marginal ridge";
          case EMBRASURE -> ", open to the embrasure";
          case STANDARD -> "";
        };
    return act
        + " a spoon-shaped seat at least "
        + mm(Quantity.REST_WIDTH)
        + " wide and as long, "
        + range(Quantity.SEAT_DEPTH_LEAST, Quantity.SEAT_DEPTH)
        + " deep at the marginal ridge, deepest inside"
        + extent;
  }

  /** How high a guide plane beside a saddle is to be. */
  String guidePlane(boolean besideFreeEnd) {
    return "flat plane "
        + (besideFreeEnd
            ? range(Quantity.GUIDE_PLANE_FREE_END, Quantity.GUIDE_PLANE_FREE_END_MOST)
            : range(Quantity.GUIDE_PLANE_HEIGHT, Quantity.GUIDE_PLANE_HEIGHT_MOST))
        + " high, "
        + share(school.limit(Quantity.GUIDE_PLANE_WIDTH))
        + " of the width of the tooth, parallel to the path of insertion";
  }

  Source guidePlaneSource(boolean besideFreeEnd) {
    return school.source(
        besideFreeEnd ? Quantity.GUIDE_PLANE_FREE_END_MOST : Quantity.GUIDE_PLANE_HEIGHT_MOST);
  }

  /** How high a surface for a reciprocal part is to be, such as "2–4 mm high". */
  String reciprocal() {
    return range(Quantity.RECIPROCAL_SURFACE, Quantity.RECIPROCAL_SURFACE_MOST)
        + " high in the middle third";
  }

  Source reciprocalSource() {
    return school.source(Quantity.RECIPROCAL_SURFACE);
  }

  /** Such as "1.5 mm". */
  String mm(Quantity q) {
    return number(school.limit(q)) + " mm";
  }

  /** Such as "3–4 mm"; "at least 5 mm" where a school sets the least above the most. */
  private String range(Quantity least, Quantity most) {
    double from = school.limit(least);
    double to = school.limit(most);
    if (from > to) {
      return "at least " + number(from) + " mm";
    }
    return from == to ? number(from) + " mm" : number(from) + "–" + number(to) + " mm";
  }

  private static String share(double part) {
    if (Math.abs(part - 1.0 / 3) < 0.01) {
      return "a third";
    }
    return Math.abs(part - 0.5) < 0.01 ? "half" : Math.round(part * 100) + " %";
  }

  private static String number(double v) {
    return BigDecimal.valueOf(v)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
