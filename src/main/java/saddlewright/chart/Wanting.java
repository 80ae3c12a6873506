package saddlewright.chart;

import java.util.List;
import saddlewright.dentition.Tooth;

/** Tells beside which teeth a field of the chart is still empty. */
public final class Wanting {
  private Wanting() {}

  /** The teeth of the field without a value, in the order of the arch. */
  public static List<Tooth> teeth(ArchChart chart, ChartField field) {
    return field.teeth().stream().filter(t -> !isCharted(chart, field, t)).toList();
  }

  private static boolean isCharted(ArchChart chart, ChartField field, Tooth tooth) {
    ToothFindings f = chart.tooth(tooth);
    SoftTissues s = chart.softTissues();
    return switch (field.kind()) {
      case LINGUAL_DEPTH -> s.lingualDepth().containsKey(tooth);
      case BUCCAL_DEPTH -> s.buccalDepth().containsKey(tooth);
      case TISSUE_UNDERCUT -> s.tissueUndercut().containsKey(tooth);
      case UNDERCUT -> field.zone().map(f.undercuts()::containsKey).orElse(false);
      case UNDERCUT_HEIGHT ->
          field.zone().map(f.undercuts()::get).flatMap(Undercut::height).isPresent();
      case CLEARANCE -> field.site().map(f.clearances()::containsKey).orElse(false);
      case MOBILITY -> f.mobility().isPresent();
      case BONE_SUPPORT -> f.boneSupportPercent().isPresent();
      case CROWN_ROOT -> f.crownRoot().isPresent();
      case CROWN_HEIGHT -> f.crownHeight().isPresent();
      case CONDITION -> f.condition().isPresent();
      case TILT_DEGREES -> f.tiltDegrees().isPresent();
      case SADDLE_SPACE -> f.saddleSpace().isPresent();
      default -> false;
    };
  }
}
