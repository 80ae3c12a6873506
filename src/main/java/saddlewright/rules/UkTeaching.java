package saddlewright.rules;

import java.util.EnumMap;
import java.util.Map;

/** The limits of the British teaching profile. */
final class UkTeaching {
  private UkTeaching() {}

  static Map<Quantity, Threshold> limits() {
    Map<Quantity, Threshold> m = new EnumMap<>(Quantity.class);
    m.put(Quantity.REST_CLEARANCE_LEAST, Threshold.read(1.0, Literature.BDJ_PREPARATION));
    m.put(
        Quantity.REST_CLEARANCE,
        Threshold.read(1.5, "North American teaching cards: 1 to 1.5 mm for strength"));
    m.put(
        Quantity.RESTS_PER_DENTURE,
        Threshold.read(3, Literature.EXAM_NOTES + "; " + Literature.ANKARA));
    m.put(
        Quantity.LONG_SPAN,
        Threshold.derived(
            4,
            "a Class IV span counts as long when both central and both lateral incisors, or as many"
                + " teeth, are replaced: their arc then lies clearly in front of the abutments"));
    // Saddles and support.
    m.put(
        Quantity.REST_WIDTH,
        Threshold.read(2.5, Literature.STRATTON + "; a third to a half of the crown elsewhere"));
    m.put(
        Quantity.REST_TRIANGLE,
        Threshold.derived(
            5,
            "schools ask for a triangle and give no figure; within 5 mm, less than the depth of a"
                + " premolar crown, three rests still act as a line"));
    m.put(
        Quantity.TILTED_MOLAR_REACH,
        Threshold.read(
            1,
            Literature.BRITISH_NOTES
                + "; a photoelastic study: a mesial rest tips a tilted molar most, a channel"
                + " through the fissure least"));
    m.put(
        Quantity.TOOTH_BORNE_SPAN,
        Threshold.read(3, Literature.BRITISH_NOTES + ": twice one and a half teeth"));
    m.put(Quantity.LOAD_PER_ABUTMENT, Threshold.read(1.5, Literature.BRITISH_NOTES));
    m.put(
        Quantity.SADDLE_SPACE,
        Threshold.read(3, Literature.OKLAHOMA + " (question only): mesh cannot fit below 3 mm"));
    m.put(
        Quantity.FLANGE_UNDERCUT,
        Threshold.derived(
            1, "the depth of tissue undercut that already bars a clasp arm; no school gives one"));
    m.put(Quantity.MESH_SHARE, Threshold.read(2.0 / 3, Literature.DENTAL_STUDY_NOTES));
    m.put(
        Quantity.FREE_END_TEETH,
        Threshold.derived(
            3,
            "from the advice to leave the last third of a long base without teeth: two premolars or"
                + " a premolar and two molars are as much as one abutment steadies"));
    m.put(
        Quantity.BACK_TEETH_MEETING,
        Threshold.read(4, Literature.CREUGERS + ": three to five posterior occluding units"));
    m.put(
        Quantity.PARTS_ON_TEETH,
        Threshold.derived(
            16,
            "four clasps, more than most schools want, each with its rest and minor connector, and"
                + " two indirect retainers with theirs"));

    m.put(
        Quantity.CAST_ARM_LENGTH_LEAST,
        Threshold.fromMemory(
            13, Literature.BDJ_CLASPS + ": 13 to 14 mm tolerated in some schools"));
    m.put(Quantity.CAST_ARM_LENGTH, Threshold.read(15, Literature.BRITISH_NOTES));
    m.put(Quantity.UNDERCUT_CAST, Threshold.read(0.25, Literature.BRITISH_NOTES));
    m.put(Quantity.UNDERCUT_WROUGHT_GOLD, Threshold.read(0.50, Literature.BRITISH_NOTES));
    m.put(Quantity.UNDERCUT_WROUGHT_STEEL, Threshold.read(0.75, Literature.BRITISH_NOTES));
    m.put(
        Quantity.UNDERCUT_LATITUDE,
        Threshold.derived(0.125, "half the 0.25 mm step between two undercut gauges"));
    m.put(
        Quantity.BAR_ARM_MARGIN,
        Threshold.read(3, Literature.ELIASON + "; " + Literature.STRATTON));
    m.put(
        Quantity.BAR_ARM_SULCUS,
        Threshold.read(4, Literature.STEWART_NOTES + " (and Br Dent J 2001;190 from memory)"));
    m.put(
        Quantity.TISSUE_UNDERCUT,
        Threshold.fromMemory(
            1, Literature.BDJ_CLASPS + ": 1 mm deep within 3 mm of the gingival margin"));
    clasps(m);
    m.put(Quantity.LINGUAL_BAR_DEPTH_LEAST, Threshold.read(7, Literature.STRATTON));
    m.put(
        Quantity.LINGUAL_BAR_DEPTH,
        Threshold.read(
            8,
            Literature.BRITISH_NOTES + ": 3 mm clear, 4 mm of bar, 1 mm above the raised floor"));
    m.put(Quantity.SUBLINGUAL_BAR_DEPTH, Threshold.read(5, Literature.BRITISH_NOTES));
    m.put(
        Quantity.LOWER_BORDER,
        Threshold.read(3, Literature.BRITISH_NOTES + "; " + Literature.STRATTON));
    m.put(Quantity.UPPER_BORDER_LEAST, Threshold.read(3, Literature.BRITISH_NOTES));
    m.put(Quantity.UPPER_BORDER, Threshold.read(6, Literature.OKLAHOMA));
    m.put(
        Quantity.STRAP_WIDTH,
        Threshold.read(8, "North American teaching notes: less than 8 mm is a bar"));
    m.put(Quantity.RING_OPENING, Threshold.read(15, Literature.EXAM_NOTES));
    m.put(
        Quantity.MINOR_SPACING, Threshold.read(5, Literature.EXAM_NOTES + "; 4 to 6 mm elsewhere"));
    m.put(
        Quantity.INDIRECT_DISTANCE,
        Threshold.derived(
            5,
            "no school gives a figure, only \"as far as possible\"; at 5 mm the lever of a saddle"
                + " of two molars, some 20 to 25 mm, is already four to five times as long, and the"
                + " clasps must hold five to six times the pull"));
    m.put(
        Quantity.MOBILITY,
        Threshold.read(2, "teaching notes on mouth preparation: above grade II, do not use"));
    bracingAndAbutments(m);
    connectors(m);
    preparations(m);
    return m;
  }

  private static void clasps(Map<Quantity, Threshold> m) {
    m.put(Quantity.CLASPS, Threshold.fromMemory(4, "common teaching: four clasps at the most"));
    m.put(
        Quantity.CLASPS_USUAL, Threshold.read(3, Literature.STEWART_NOTES + ": three are enough"));
    m.put(Quantity.CLASPS_CLASS_ONE, Threshold.read(2, Literature.ANKARA));
    m.put(
        Quantity.CLASPS_CLASS_TWO_LEAST,
        Threshold.fromMemory(
            2, Literature.BDJ_CLASPS + ": one near the saddle, one far back across the arch"));
    m.put(
        Quantity.CLASPS_CLASS_TWO,
        Threshold.read(3, "North American teaching cards; " + Literature.WESTERN_AUSTRALIA));
    m.put(
        Quantity.CLASP_AXIS_REACH,
        Threshold.derived(
            2,
            "a tip lies 2 to 3 mm from the mesial rest of its own premolar; a denture that reaches"
                + " no farther than that beyond the line lies on one side of it"));
    m.put(Quantity.CLASP_MOBILITY, Threshold.read(1, Literature.ANKARA));
    m.put(
        Quantity.BAR_ARM_SULCUS_AMPLE,
        Threshold.read(7, "one set of British undergraduate teaching notes, alone"));
    m.put(
        Quantity.BAR_ARM_TILT,
        Threshold.derived(
            15,
            "no school gives a figure for a strong tilt; a crown 8 mm tall that leans by 15° stands"
                + " out over its margin by 8 mm x tan 15° = 2.1 mm"));
    m.put(
        Quantity.SHORT_GAP,
        Threshold.derived(
            1, "a gap of one tooth, some 7 mm, leaves a bar arm no length beside its teeth"));
    m.put(
        Quantity.EMBRASURE_ROOM, Threshold.fromMemory(1.5, "common teaching on embrasure clasps"));
    m.put(Quantity.TIP_MARGIN, Threshold.fromMemory(1, "common teaching: 1 to 1.5 mm"));
    m.put(
        Quantity.TIP_AHEAD,
        Threshold.derived(
            1,
            "seats and tips are placed on mean crowns to about 1 mm; a tip no farther in front"
                + " moves by less than a twentieth of what the end of the saddle sinks"));
  }

  /** Bracing, indirect retention and abutments. */
  private static void bracingAndAbutments(Map<Quantity, Threshold> m) {
    m.put(
        Quantity.ENCIRCLEMENT,
        Threshold.read(180, Literature.NEURONS + "; " + Literature.MCCRACKEN_NOTES));
    m.put(
        Quantity.MARGIN_CROSSING,
        Threshold.derived(
            70,
            "taught is a right angle; at 70 degrees a bar covers 6 per cent more of the margin than"
                + " it must (1 / sin 70), and the slant begins to show"));
    m.put(
        Quantity.GUIDE_PLANE_HEIGHT,
        Threshold.read(3, "North American teaching cards: 3 to 4 mm; " + Literature.STEWART_NOTES));
    m.put(
        Quantity.GUIDE_PLANE_FREE_END,
        Threshold.read(1.5, "North American teaching cards: 1.5 to 2 mm; " + Literature.DALHOUSIE));
    m.put(
        Quantity.SHORT_CROWN,
        Threshold.derived(
            5,
            "an arm 1.5 mm high, a guide plane of 2 mm under it, and 1.5 mm to the gingival"
                + " margin"));
    m.put(
        Quantity.LEVER_RATIO,
        Threshold.derived(
            0.2,
            "by the law of levers the clasps must hold 1 + 1/r times the pull on the saddle: six"
                + " times at a ratio of 0.2"));
    m.put(
        Quantity.CROWN_ROOT_MOST,
        Threshold.read(2, Literature.ANKARA + ": a crown twice as long as its root"));
    m.put(
        Quantity.CROWN_ROOT,
        Threshold.read(1, Literature.ANKARA + ": a crown as long as its root is weak"));
    m.put(
        Quantity.BONE_SUPPORT,
        Threshold.fromMemory(50, "common teaching on periodontally reduced abutments"));
    m.put(
        Quantity.ABUTMENT_LEAN,
        Threshold.derived(
            25,
            "sin 25 = 0.42: more than two fifths of a bite along the path push the tooth"
                + " sideways"));
    m.put(
        Quantity.GUIDED_LEAN,
        Threshold.fromMemory(
            10, "common teaching on the tilt of a cast for the sake of guide planes"));
  }

  // Connectors and gingival hygiene.
  private static void connectors(Map<Quantity, Threshold> m) {
    m.put(
        Quantity.MIDLINE_SKEW,
        Threshold.derived(
            15,
            "schools ask for a right angle; 15 degrees is a rise of 2.7 mm over 10 mm of border,"
                + " about what the eye sees as slanting"));
    m.put(
        Quantity.LONG_FREE_END,
        Threshold.derived(
            3, "a free-end saddle of three teeth is longer than the two molars usually replaced"));
    m.put(
        Quantity.SHORT_SADDLE,
        Threshold.derived(
            3, "a bounded saddle of up to three teeth is commonly borne by its two abutments"));
    m.put(
        Quantity.COMPLETE_PALATE,
        Threshold.derived(
            6, "a border within 6 mm of the soft palate leaves nothing worth covering behind it"));
    m.put(Quantity.HORSESHOE_LIMB, Threshold.read(6, Literature.MAXILLARY_NOTES));
    m.put(Quantity.RING_FRONT_LIMB, Threshold.read(6, Literature.MAXILLARY_NOTES));
    m.put(Quantity.RING_REAR_LIMB, Threshold.read(8, Literature.MAXILLARY_NOTES));
    m.put(Quantity.RING_SIDE_LIMB, Threshold.read(7, Literature.MAXILLARY_NOTES));
    m.put(
        Quantity.RUGAE_COVER,
        Threshold.derived(50, "schools ask that the rugae be left free as far as may be"));
    m.put(
        Quantity.LOOSE_TOOTH,
        Threshold.commonPractice(2, "grade 2: the tooth moves more than 1 mm sideways"));
    m.put(Quantity.BAR_HEIGHT, Threshold.read(4, Literature.BRITISH_NOTES));
    m.put(Quantity.FLOOR_CLEARANCE, Threshold.read(1, Literature.BRITISH_NOTES));
    m.put(
        Quantity.DENTAL_BAR_CROWN,
        Threshold.derived(
            8, "a bar 4 mm high, with room above it to the edge and below it to the margin"));
    m.put(
        Quantity.BAR_SPAN_TEETH,
        Threshold.commonPractice(4, "the four incisors between two rested canines"));
    m.put(
        Quantity.LABIAL_SULCUS,
        Threshold.read(8, Literature.MANDIBULAR_NOTES + ": 3 mm clear and a bar of 5 mm"));
    m.put(Quantity.LOWER_RELIEF, Threshold.read(0.2, Literature.STEWART_NOTES));
    m.put(
        Quantity.BAR_STIFFNESS,
        Threshold.derived(
            2,
            "the most flexible bar commonly cast, half an ellipse of 4 by 1.5 mm, has 2.0 N/mm over"
                + " a usual arch in the same model (ranking of sections: "
                + Literature.BEN_UR
                + ")"));
    m.put(
        Quantity.CROSSING,
        Threshold.derived(
            70, "schools ask for a right angle; up to 20 degrees off it is the run of the gum"));
    m.put(
        Quantity.COVERED_MARGINS,
        Threshold.derived(
            40,
            "hygienic teaching asks for as few covered margins as possible and gives no figure; a"
                + " bar with four struts covers less than a fifth, a plate nearly all"));
    m.put(
        Quantity.MINOR_CONNECTORS,
        Threshold.derived(
            6, "two for each free end and one for each further rest make four to six"));
  }

  private static void preparations(Map<Quantity, Threshold> m) {
    String occlusal = Literature.STRATTON + "; " + Literature.REST_SEATS + ": 1 to 1.5 mm";
    m.put(Quantity.SEAT_DEPTH_LEAST, Threshold.read(1, occlusal));
    m.put(Quantity.SEAT_DEPTH, Threshold.read(1.5, occlusal));
    String cingulum = Literature.MCCRACKEN_NOTES + ": 2.5 to 3 mm wide, 2 mm, 1.5 mm deep";
    m.put(Quantity.CINGULUM_SEAT_WIDTH, Threshold.read(2.5, cingulum));
    m.put(Quantity.CINGULUM_SEAT_REACH, Threshold.read(2, cingulum));
    m.put(Quantity.CINGULUM_SEAT_DEPTH, Threshold.read(1.5, cingulum));
    String incisal = Literature.STEWART_NOTES + ": 2.5 mm wide, 1.5 mm deep";
    m.put(Quantity.INCISAL_SEAT_WIDTH, Threshold.read(2.5, incisal));
    m.put(Quantity.INCISAL_SEAT_DEPTH, Threshold.read(1.5, incisal));
    m.put(
        Quantity.GUIDE_PLANE_HEIGHT_MOST,
        Threshold.read(
            4, Literature.GUIDE_PLANE_CARDS + "; " + Literature.STEWART_NOTES + ": 3 to 4 mm"));
    m.put(
        Quantity.GUIDE_PLANE_FREE_END_MOST,
        Threshold.read(
            2, Literature.GUIDE_PLANE_CARDS + "; " + Literature.STEWART_NOTES + ": 1.5 to 2 mm"));
    m.put(Quantity.GUIDE_PLANE_WIDTH, Threshold.read(1.0 / 3, Literature.STEWART_NOTES));
    String reciprocal = Literature.DALHOUSIE + ": 2 to 4 mm in the middle third";
    m.put(Quantity.RECIPROCAL_SURFACE, Threshold.read(2, reciprocal));
    m.put(Quantity.RECIPROCAL_SURFACE_MOST, Threshold.read(4, reciprocal));
  }
}
