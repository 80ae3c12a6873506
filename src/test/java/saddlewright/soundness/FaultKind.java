package saddlewright.soundness;

/** A kind of mistake that is put into a sound design on purpose. */
enum FaultKind {
  REST_REMOVED("rest removed"),
  INDIRECT_RETAINER_REMOVED("indirect retainer removed"),
  CLASP_REMOVED("clasp removed"),
  RECIPROCATION_REMOVED("reciprocal element removed"),
  CONNECTOR_REMOVED("major connector removed"),
  GUIDE_PLATE_REMOVED("guide plate removed"),
  MINOR_CONNECTOR_REMOVED("minor connector removed"),
  TISSUE_STOP_REMOVED("tissue stop removed"),
  MESH_REMOVED("mesh removed"),
  TIP_AT_OTHER_END("tip at the other end of its face"),
  TIP_ON_OTHER_FACE("tip on the other face"),
  CONNECTOR_NEAR_MARGIN("connector 1 mm from the margins"),
  CONNECTOR_NEARER_THAN_TAUGHT("connector 2.5 mm from the margins"),
  BAR_ARM_NEAR_MARGIN("bar arm 1 mm from the margin"),
  BAR_ARM_NEARER_THAN_TAUGHT("bar arm 2.5 mm from the margin"),
  NARROW_WINDOW("minor connectors 2 mm apart"),
  WINDOW_NARROWER_THAN_TAUGHT("minor connectors 4 mm apart"),
  SMALL_OPENING("ring opening of 8 mm"),
  NARROW_STRAP("strap 5 mm broad"),
  SHALLOW_FLOOR("floor of the mouth too high for the bar"),
  SHALLOW_SULCUS("buccal sulcus 2 mm deep at a bar arm"),
  SULCUS_SHALLOWER_THAN_TAUGHT("buccal sulcus 3.5 mm deep at a bar arm"),
  NO_ROOM_FOR_REST("0.3 mm of room over a rest"),
  LITTLE_ROOM_FOR_REST("0.8 mm of room over a rest"),
  WRONG_FORM("wrong clasp form"),
  ARM_FROM_WRONG_END("arm from the end of its own undercut"),
  WRONG_MATERIAL("material against the undercut"),
  REST_AT_WRONG_END("rest at the wrong end"),
  TOOTH_LOOSE("abutment of mobility III"),
  TOOTH_MOBILE("abutment of mobility II"),
  UNDERCUT_SHALLOW("undercut of 0.05 mm at the tip"),
  UNDERCUT_DEEP("undercut 0.25 mm too deep for the arm"),
  UNDERCUT_LOW("undercut 0.3 mm above the margin"),
  CROWN_SHORT("clasped crown 3 mm high"),
  TOOTH_CARIOUS("carious abutment"),
  BONE_LOST("abutment with 20 % of its bone"),
  ROOT_SHORT("abutment with a crown twice its root");

  private final String words;

  FaultKind(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }
}
