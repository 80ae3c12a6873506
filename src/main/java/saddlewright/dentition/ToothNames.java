package saddlewright.dentition;

/** Names of teeth and their parts as the trade says them in English. */
public final class ToothNames {
  private static final String[] SORTS = {
    "central incisor",
    "lateral incisor",
    "canine",
    "first premolar",
    "second premolar",
    "first molar",
    "second molar",
    "third molar"
  };

  private ToothNames() {}

  /** Such as "first molar". */
  public static String sort(Tooth tooth) {
    return SORTS[tooth.position() - 1];
  }

  /** Such as "upper right first molar". */
  public static String full(Tooth tooth) {
    return tooth.arch().code() + (tooth.side() == Side.RIGHT ? " right " : " left ") + sort(tooth);
  }

  /** Buccal or labial; lingual or palatal. */
  public static String face(Tooth tooth, Face face) {
    if (face == Face.BUCCAL) {
      return tooth.isAnterior() ? "labial" : "buccal";
    }
    return tooth.arch() == Arch.UPPER ? "palatal" : "lingual";
  }

  /** Such as "mesiobuccal" or "mid-palatal". */
  public static String zone(Tooth tooth, Zone zone) {
    String face = face(tooth, zone.face());
    return zone.end()
        .map(e -> e == End.MESIAL ? "mesio" + face : "disto" + face)
        .orElse("mid-" + face);
  }

  /** Such as "mesial occlusal" or "cingulum". */
  public static String site(RestSite site) {
    return switch (site) {
      case MESIAL_OCCLUSAL -> "mesial occlusal";
      case DISTAL_OCCLUSAL -> "distal occlusal";
      case CINGULUM -> "cingulum";
      case MESIAL_INCISAL -> "mesial incisal";
      case DISTAL_INCISAL -> "distal incisal";
    };
  }

  public static String end(End end) {
    return end == End.MESIAL ? "mesial" : "distal";
  }
}
