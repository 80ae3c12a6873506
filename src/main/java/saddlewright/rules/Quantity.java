package saddlewright.rules;

/** A quantity for which a school sets a limit. */
public enum Quantity {
  REST_CLEARANCE_LEAST("room above a rest seat, least", "mm"),
  REST_CLEARANCE("room above a rest seat", "mm"),
  RESTS_PER_DENTURE("rests on a denture", ""),
  LONG_SPAN("teeth replaced in a long anterior span", ""),
  REST_WIDTH("width of an occlusal rest at the marginal ridge", "mm"),
  REST_TRIANGLE("rests off the line through the two farthest apart", "mm"),
  TILTED_MOLAR_REACH("share of a tilted molar that a mesial rest alone must run through", ""),
  TOOTH_BORNE_SPAN("teeth that two abutments carry between them, most", ""),
  LOAD_PER_ABUTMENT("teeth that one sound tooth carries besides itself", ""),
  SADDLE_SPACE("height for mesh, acrylic and tooth", "mm"),
  FLANGE_UNDERCUT("tissue undercut under a full flange, most", "mm"),
  MESH_SHARE("share of a lower free-end ridge under mesh", ""),
  FREE_END_TEETH("teeth on a free-end saddle, most", ""),
  BACK_TEETH_MEETING("pairs of back teeth that make a shortened arch enough", ""),
  PARTS_ON_TEETH("rests, clasps and minor connectors of a denture, most", ""),
  CAST_ARM_LENGTH_LEAST("length of a cast cobalt-chromium arm from above, least", "mm"),
  CAST_ARM_LENGTH("length of a cast cobalt-chromium arm from above", "mm"),
  UNDERCUT_CAST("undercut for cast cobalt-chromium", "mm"),
  UNDERCUT_WROUGHT_GOLD("undercut for wrought gold", "mm"),
  UNDERCUT_WROUGHT_STEEL("undercut for wrought stainless steel", "mm"),
  UNDERCUT_LATITUDE("latitude in the depth of an undercut", "mm"),
  BAR_ARM_MARGIN("a gingivally approaching arm clear of the gingival margin", "mm"),
  BAR_ARM_SULCUS("buccal sulcus for a gingivally approaching arm", "mm"),
  TISSUE_UNDERCUT("tissue undercut under a gingivally approaching arm, most", "mm"),
  CLASPS("clasps on a denture, most", ""),
  CLASPS_USUAL("clasps on a denture with a free end, most", ""),
  CLASPS_CLASS_ONE("clasps on a Class I denture", ""),
  CLASPS_CLASS_TWO_LEAST("clasps on a Class II denture, least", ""),
  CLASPS_CLASS_TWO("clasps on a Class II denture, most", ""),
  CLASP_AXIS_REACH("denture on the lesser side of the clasp axis", "mm"),
  CLASP_MOBILITY("mobility of a clasped tooth, most", "grade"),
  BAR_ARM_SULCUS_AMPLE("buccal sulcus for a gingivally approaching arm, ample", "mm"),
  BAR_ARM_TILT("lingual tilt under a gingivally approaching arm, most", "°"),
  SHORT_GAP("a short bounded gap, most", "teeth"),
  EMBRASURE_ROOM("room for the body of an embrasure clasp", "mm"),
  TIP_MARGIN("a retentive tip above the gingival margin", "mm"),
  TIP_AHEAD("a stiff tip in front of the support axis, most", "mm"),
  LINGUAL_BAR_DEPTH_LEAST("lingual depth for a lingual bar, least", "mm"),
  LINGUAL_BAR_DEPTH("lingual depth for a lingual bar", "mm"),
  SUBLINGUAL_BAR_DEPTH("lingual depth for a sublingual bar", "mm"),
  LOWER_BORDER("lower connector clear of gingival margins", "mm"),
  UPPER_BORDER_LEAST("upper connector clear of gingival margins, least", "mm"),
  UPPER_BORDER("upper connector clear of gingival margins", "mm"),
  STRAP_WIDTH("palatal strap, front to back", "mm"),
  RING_OPENING("opening of a ring, front to back", "mm"),
  MINOR_SPACING("between two minor connectors", "mm"),
  INDIRECT_DISTANCE("indirect retainer beyond the axis", "mm"),
  MOBILITY("mobility of an abutment, most", "grade"),

  // Bracing, indirect retention and abutments.
  ENCIRCLEMENT("round of a tooth held by its clasp unit, more than", "degrees"),
  MARGIN_CROSSING("angle at which a bar arm crosses the gingival margin", "degrees"),
  GUIDE_PLANE_HEIGHT("height of a guide plane beside a bounded saddle", "mm"),
  GUIDE_PLANE_FREE_END("height of a guide plane at a free end", "mm"),
  SHORT_CROWN("height of a crown for a reciprocal arm", "mm"),
  LEVER_RATIO("lever of an indirect retainer over that of the saddle", ""),
  CROWN_ROOT_MOST("crown over root of an abutment, most", ""),
  CROWN_ROOT("crown over root of a good abutment, less than", ""),
  BONE_SUPPORT("bone around the root of an abutment", "per cent"),
  ABUTMENT_LEAN("lean of an abutment, most", "degrees"),
  GUIDED_LEAN("lean of a tooth towards its guide plate, most", "degrees"),

  // Connectors and gingival hygiene.
  MIDLINE_SKEW("rear border of an upper connector off square on the midline, most", "degrees"),
  LONG_FREE_END("teeth replaced by a long free-end saddle", ""),
  SHORT_SADDLE("teeth replaced by a short bounded saddle, most", ""),
  COMPLETE_PALATE("rear border of a complete plate from the soft palate, most", "mm"),
  HORSESHOE_LIMB("limbs of a horseshoe", "mm"),
  RING_FRONT_LIMB("front limb of a ring", "mm"),
  RING_REAR_LIMB("rear limb of a ring", "mm"),
  RING_SIDE_LIMB("side limbs of a ring", "mm"),
  RUGAE_COVER("palatal rugae covered, most", "%"),
  LOOSE_TOOTH("mobility of a weak tooth", "grade"),
  BAR_HEIGHT("height of a lower bar", "mm"),
  FLOOR_CLEARANCE("lower bar above the raised floor of the mouth", "mm"),
  DENTAL_BAR_CROWN("crown height for a dental bar", "mm"),
  BAR_SPAN_TEETH("teeth between two supports of a bar on the teeth, most", ""),
  LABIAL_SULCUS("labial sulcus for a labial bar", "mm"),
  LOWER_RELIEF("relief under a lower connector", "mm"),
  BAR_STIFFNESS("stiffness of a lower bar", "N/mm"),
  CROSSING("angle at which a minor connector crosses the margin", "degrees"),
  COVERED_MARGINS("gingival margins covered, most", "%"),
  MINOR_CONNECTORS("minor connectors of a denture, most", ""),

  // Mouth preparations; where two stand, the first is the least and the second the most.
  SEAT_DEPTH_LEAST("depth of an occlusal seat at the marginal ridge, least", "mm"),
  SEAT_DEPTH("depth of an occlusal seat at the marginal ridge, most", "mm"),
  CINGULUM_SEAT_WIDTH("width of a cingulum seat, mesial to distal", "mm"),
  CINGULUM_SEAT_REACH("a cingulum seat from front to back", "mm"),
  CINGULUM_SEAT_DEPTH("depth of a cingulum seat", "mm"),
  INCISAL_SEAT_WIDTH("width of an incisal seat", "mm"),
  INCISAL_SEAT_DEPTH("depth of an incisal seat", "mm"),
  GUIDE_PLANE_HEIGHT_MOST("height of a guide plane beside a bounded saddle, most", "mm"),
  GUIDE_PLANE_FREE_END_MOST("height of a guide plane at a free end, most", "mm"),
  GUIDE_PLANE_WIDTH("width of a guide plane, share of the tooth", ""),
  RECIPROCAL_SURFACE("height of a reciprocal surface, least", "mm"),
  RECIPROCAL_SURFACE_MOST("height of a reciprocal surface, most", "mm");

  private final String words;
  private final String unit;

  Quantity(String words, String unit) {
    this.words = words;
    this.unit = unit;
  }

  public String words() {
    return words;
  }

  public String unit() {
    return unit;
  }

  /** A value with the unit, such as "8 mm". */
  public String amount(double value) {
    return LimitRange.withUnit(value, unit);
  }
}
