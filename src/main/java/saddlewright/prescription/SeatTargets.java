package saddlewright.prescription;

import saddlewright.dentition.RestSite;
import saddlewright.design.Rest;
import saddlewright.rules.Source;

/** Sizes of rest seats and of the surfaces that guide a denture, each with its source. */
final class SeatTargets {
  static final Source OCCLUSAL =
      Source.read(
          "Stratton and Wiebelt, Atlas of Removable Partial Denture Design, 1988, as quoted by a"
              + " laboratory: half the distance between cusps, at least 2.5 mm; 1 to 1.5 mm deep at"
              + " the marginal ridge, 0.5 mm deeper inside");
  static final Source CINGULUM =
      Source.read(
          "teaching notes of McCracken's Removable Partial Prosthodontics: 2.5 to 3 mm wide, 2 mm"
              + " from lingual to labial, 1.5 mm deep");
  static final Source INCISAL =
      Source.read(
          "student notes of Stewart's Clinical Removable Partial Prosthodontics: 2.5 mm wide, 1.5"
              + " mm deep");
  static final Source EMBRASURE =
      Source.fromMemory("clearance of 1.5 mm for the metal of an embrasure clasp");
  static final Source GUIDE_PLANE =
      Source.read(
          "student notes of Stewart's Clinical Removable Partial Prosthodontics: 3 to 4 mm high"
              + " beside a bounded saddle, 1.5 to 2 mm beside a free end; a third of the width of"
              + " the tooth");
  static final Source RECIPROCAL =
      Source.read("Dalhousie University, RPD manual: 2 to 4 mm in the middle third");
  static final Source FINISH = Source.commonPractice("polish and protect every cut surface");

  private SeatTargets() {}

  static Source source(Rest rest) {
    if (rest.form() == Rest.Form.EMBRASURE) {
      return EMBRASURE;
    }
    return rest.site() == RestSite.CINGULUM
        ? CINGULUM
        : rest.site().isIncisal() ? INCISAL : OCCLUSAL;
  }

  /** What to cut, or to build, for a rest. */
  static String seat(Rest rest) {
    boolean built = rest.seat() == Rest.Seat.COMPOSITE;
    if (rest.site() == RestSite.CINGULUM) {
      return built
          ? "build a composite ledge 2.5–3 mm wide and 2 mm from front to back, its floor at right"
              + " angles to the long axis"
          : "cut an inverted V 2.5–3 mm wide, 2 mm front to back, 1.5 mm deep; stop short of dentine";
    }
    if (rest.site().isIncisal()) {
      return (built ? "build" : "cut") + " a rounded notch 2.5 mm wide and 1.5 mm deep";
    }
    String extent =
        switch (rest.form()) {
          case EXTENDED -> ", carried past the centre of the tooth";
          case DOUBLE -> ", carried through the fissure to the other marginal ridge";
          case EMBRASURE -> ", open to the embrasure";
          case STANDARD -> "";
        };
    return (built ? "build" : "cut")
        + " a spoon-shaped seat at least 2.5 mm wide (half the distance between cusps), 1–1.5 mm deep"
        + " at the marginal ridge"
        + extent;
  }

  /** How high a guide plane is to be. */
  static String guidePlane(boolean besideFreeEnd) {
    return (besideFreeEnd ? "flat plane 1.5–2 mm high" : "flat plane 3–4 mm high")
        + ", a third of the width of the tooth, parallel to the path of insertion";
  }
}
