package saddlewright.desktop.panels;

import java.util.List;
import saddlewright.chart.ChartField;

/** Finds the input of a form in which a value of the chart is written. */
final class FieldPlace {
  private FieldPlace() {}

  /** Ids of inputs, the one for the value first, then what has to be filled in before it. */
  static List<String> of(ChartField field) {
    return switch (field.kind()) {
      case LINGUAL_DEPTH -> List.of("soft-lingual");
      case BUCCAL_DEPTH -> List.of("soft-buccal");
      case TISSUE_UNDERCUT -> List.of("soft-undercut");
      case UNDERCUT -> field.zone().map(z -> List.of("undercut-" + z)).orElse(List.of());
      case UNDERCUT_HEIGHT ->
          field.zone().map(z -> List.of("undercut-height-" + z, "undercut-" + z)).orElse(List.of());
      case CLEARANCE -> field.site().map(s -> List.of("clearance-" + s)).orElse(List.of());
      case MOBILITY -> List.of("tooth-mobility");
      case BONE_SUPPORT -> List.of("tooth-bone");
      case CROWN_ROOT -> List.of("tooth-crown-root");
      case CROWN_HEIGHT -> List.of("tooth-height");
      case CONDITION -> List.of("tooth-condition");
      case TILT_DEGREES -> List.of("tooth-tilt-degrees", "tooth-tilt");
      case SADDLE_SPACE -> List.of("tooth-saddle-space");
      case RIDGE -> field.side().map(s -> List.of("ridge-" + field.arch() + s)).orElse(List.of());
      case PALATE_FORM -> List.of("palate");
      case PALATE_LIMIT -> List.of("palate-limit");
    };
  }
}
