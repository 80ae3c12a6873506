package saddlewright.rules;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;

/** What North American teaching holds otherwise than British teaching. */
final class NorthAmericanTeaching {
  private NorthAmericanTeaching() {}

  static Map<Quantity, Threshold> limits() {
    Map<Quantity, Threshold> m = new EnumMap<>(Quantity.class);
    m.put(
        Quantity.TILTED_MOLAR_REACH,
        Threshold.read(0.5, Literature.EXAM_NOTES)
            .because(
                "an extended mesial rest past the centre loads a tilted molar along its axis"));
    m.put(
        Quantity.UNDERCUT_WROUGHT_STEEL,
        Threshold.read(0.50, Literature.STEWART_NOTES + ": 18 gauge wrought round wire")
            .because("the figure belongs to round wire 1.0 mm thick"));
    m.put(
        Quantity.LOWER_BORDER,
        Threshold.read(4, Literature.MCCRACKEN_NOTES)
            .because("a half-pear bar 4 mm high is placed with as much free gum above it"));
    m.put(
        Quantity.LONG_SPAN,
        Threshold.read(6, Literature.OKLAHOMA + ": no axis until all six front teeth are gone")
            .because("a shorter front span is taken to be carried by its abutments alone"));
    m.put(
        Quantity.CLASPS_CLASS_TWO_LEAST,
        Threshold.read(3, "North American teaching cards: two for Class I, three for Class II")
            .because("three points hold the denture against tipping about a diagonal"));
    m.put(
        Quantity.BAR_ARM_SULCUS_AMPLE,
        Threshold.read(4, Literature.STEWART_NOTES)
            .because("3 mm to the margin and the arm are all that is asked for"));
    return m;
  }

  static Map<String, Weighting> weights() {
    Map<String, Weighting> m = new TreeMap<>();
    m.put(
        "tooth-borne-dentures-stand-on-four-rests",
        Weighting.of(
                Severity.SHOULD,
                Source.read("North American teaching cards: four points of support"))
            .because("a quadrilateral of rests is the rule for Class III"));
    m.put(
        "cast-arms-are-long-enough",
        Weighting.of(
                Severity.CONSIDER,
                Source.read(Literature.OKLAHOMA + ": cast circumferential arms on premolars"))
            .because("bench data keep a cast arm in 0.25 mm within its safe limit on premolars"));
    m.put(
        "free-end-rests-lie-away-from-the-saddle",
        Weighting.of(
                Severity.CONSIDER,
                Source.read(Literature.OKLAHOMA + ": a distal rest with a flexible arm"))
            .because("a distal rest is still taught as acceptable when the arm is flexible"));
    m.put(
        "single-rooted-teeth-take-arms-from-below",
        Weighting.of(
                Severity.CONSIDER,
                Source.read(Literature.OKLAHOMA + ": cast circumferential arms on premolars"))
            .because("cast circumferential arms on premolars are routine"));
    return m;
  }
}
