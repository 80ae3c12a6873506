package saddlewright.prescription;

import saddlewright.design.ClaspForm;
import saddlewright.design.ClaspMaterial;
import saddlewright.design.ConnectorForm;
import saddlewright.design.Relief;
import saddlewright.design.Rest;

/** What the trade calls the kinds, forms and materials of components. */
final class TradeTerms {
  private TradeTerms() {}

  static String of(ClaspForm form) {
    return switch (form) {
      case CIRCUMFERENTIAL -> "Occlusally approaching arm";
      case RING -> "Ring clasp, occlusally approaching";
      case BACK_ACTION -> "Back-action clasp, occlusally approaching";
      case EMBRASURE -> "Embrasure clasp arm, occlusally approaching";
      case COMBINATION -> "Combination clasp, occlusally approaching arm";
      case I_BAR -> "Gingivally approaching I-bar";
      case T_BAR -> "Gingivally approaching T-bar";
      case HALF_T -> "Gingivally approaching half-T bar";
      case L_BAR -> "Gingivally approaching L-bar";
    };
  }

  static String of(ClaspMaterial material) {
    return switch (material) {
      case CAST_COBALT_CHROMIUM -> "cast cobalt-chromium";
      case CAST_TITANIUM -> "cast titanium";
      case CAST_GOLD -> "cast gold alloy";
      case WROUGHT_STAINLESS_STEEL -> "wrought stainless steel";
      case WROUGHT_COBALT_CHROMIUM -> "wrought cobalt-chromium";
      case WROUGHT_GOLD -> "wrought gold alloy";
      case POLYMER -> "polymer";
    };
  }

  static String of(ConnectorForm form) {
    return switch (form) {
      case PALATAL_STRAP -> "Palatal strap";
      case PALATAL_RING -> "Palatal ring";
      case PALATAL_PLATE -> "Palatal plate";
      case HORSESHOE -> "Horseshoe connector";
      case PALATAL_BAR -> "Palatal bar";
      case LINGUAL_BAR -> "Lingual bar";
      case SUBLINGUAL_BAR -> "Sublingual bar";
      case LINGUAL_PLATE -> "Lingual plate";
      case DENTAL_BAR -> "Dental bar";
      case CONTINUOUS_BAR -> "Lingual bar with a continuous bar on the cingula";
      case LABIAL_BAR -> "Labial bar";
    };
  }

  static String of(Rest.Seat seat) {
    return switch (seat) {
      case PREPARED_ENAMEL -> "on prepared enamel";
      case COMPOSITE -> "on a composite seat";
      case RESTORATION -> "on a seat in a restoration";
      case UNPREPARED -> "on an unprepared surface";
    };
  }

  static String of(Relief.Area area) {
    return switch (area) {
      case PALATAL_TORUS -> "over the palatal torus";
      case MIDLINE_RAPHE -> "over the midline raphe";
      case INCISIVE_PAPILLA -> "over the incisive papilla";
      case UNDER_LOWER_CONNECTOR -> "under the lower connector";
      case GINGIVAL_MARGINS -> "where metal crosses gingival margins";
    };
  }
}
