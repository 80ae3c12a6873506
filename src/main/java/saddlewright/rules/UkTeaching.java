package saddlewright.rules;

import java.util.EnumMap;
import java.util.Map;

/** The limits of the British teaching profile. */
final class UkTeaching {
  private UkTeaching() {}

  static Map<Quantity, Threshold> limits() {
    Map<Quantity, Threshold> m = new EnumMap<>(Quantity.class);
    m.put(Quantity.REST_CLEARANCE_LEAST, read(1.0, Literature.BDJ_PREPARATION));
    m.put(
        Quantity.REST_CLEARANCE,
        read(1.5, "North American teaching cards: 1 to 1.5 mm for strength"));
    m.put(Quantity.RESTS_PER_DENTURE, read(3, Literature.EXAM_NOTES + "; " + Literature.ANKARA));
    m.put(
        Quantity.LONG_SPAN,
        derived(
            4,
            "a Class IV span counts as long when both central and both lateral incisors, or as many"
                + " teeth, are replaced: their arc then lies clearly in front of the abutments"));
    m.put(
        Quantity.CAST_ARM_LENGTH_LEAST,
        memory(13, Literature.BDJ_CLASPS + ": 13 to 14 mm tolerated in some schools"));
    m.put(Quantity.CAST_ARM_LENGTH, read(15, Literature.BRITISH_NOTES));
    m.put(Quantity.UNDERCUT_CAST, read(0.25, Literature.BRITISH_NOTES));
    m.put(Quantity.UNDERCUT_WROUGHT_GOLD, read(0.50, Literature.BRITISH_NOTES));
    m.put(Quantity.UNDERCUT_WROUGHT_STEEL, read(0.75, Literature.BRITISH_NOTES));
    m.put(
        Quantity.UNDERCUT_LATITUDE,
        derived(0.125, "half the 0.25 mm step between two undercut gauges"));
    m.put(Quantity.BAR_ARM_MARGIN, read(3, Literature.ELIASON + "; " + Literature.STRATTON));
    m.put(
        Quantity.BAR_ARM_SULCUS,
        read(4, Literature.STEWART_NOTES + " (and Br Dent J 2001;190 from memory)"));
    m.put(
        Quantity.TISSUE_UNDERCUT,
        memory(1, Literature.BDJ_CLASPS + ": 1 mm deep within 3 mm of the gingival margin"));
    m.put(Quantity.LINGUAL_BAR_DEPTH_LEAST, read(7, Literature.STRATTON));
    m.put(
        Quantity.LINGUAL_BAR_DEPTH,
        read(
            8,
            Literature.BRITISH_NOTES + ": 3 mm clear, 4 mm of bar, 1 mm above the raised floor"));
    m.put(Quantity.SUBLINGUAL_BAR_DEPTH, read(5, Literature.BRITISH_NOTES));
    m.put(Quantity.LOWER_BORDER, read(3, Literature.BRITISH_NOTES + "; " + Literature.STRATTON));
    m.put(Quantity.UPPER_BORDER_LEAST, read(3, Literature.BRITISH_NOTES));
    m.put(Quantity.UPPER_BORDER, read(6, Literature.OKLAHOMA));
    m.put(Quantity.STRAP_WIDTH, read(8, "North American teaching notes: less than 8 mm is a bar"));
    m.put(Quantity.RING_OPENING, read(15, Literature.EXAM_NOTES));
    m.put(Quantity.MINOR_SPACING, read(5, Literature.EXAM_NOTES + "; 4 to 6 mm elsewhere"));
    m.put(
        Quantity.INDIRECT_DISTANCE,
        derived(
            5,
            "no school gives a figure, only \"as far as possible\"; at 5 mm the lever of a saddle"
                + " of two molars, some 20 to 25 mm, is already four to five times as long, and the"
                + " clasps must hold five to six times the pull"));
    m.put(
        Quantity.MOBILITY,
        read(2, "teaching notes on mouth preparation: above grade II, do not use"));
    return m;
  }

  private static Threshold read(double value, String citation) {
    return new Threshold(value, Source.read(citation));
  }

  private static Threshold memory(double value, String citation) {
    return new Threshold(value, Source.fromMemory(citation));
  }

  private static Threshold derived(double value, String reasoning) {
    return new Threshold(value, Source.derived(reasoning));
  }
}
