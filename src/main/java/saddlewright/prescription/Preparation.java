package saddlewright.prescription;

import java.util.List;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.ComponentId;
import saddlewright.rules.Source;

/**
 * One thing to be done in the mouth before the master impression, because the design asks for it.
 *
 * @param stage when it is done
 * @param arch the arch
 * @param teeth the teeth concerned, in arch order; never empty
 * @param surface where on the tooth, such as "mesial occlusal"; empty when it is the whole tooth
 * @param target what to aim at, with sizes
 * @param components what asks for it; empty when the chart does
 * @param reason the same in words
 * @param source where the sizes come from
 */
public record Preparation(
    Stage stage,
    Arch arch,
    List<Tooth> teeth,
    String surface,
    String target,
    List<ComponentId> components,
    String reason,
    Source source) {

  /**
   * When in the order of treatment a preparation is done: surgery and disease first, then surfaces
   * that are parallel to the path, then contours and undercuts, then seats, and polishing last
   * (teaching texts on mouth preparation).
   */
  public enum Stage {
    EXTRACTION("Extractions"),
    RESTORATION("Caries and restorations"),
    GUIDE_PLANE("Guide planes"),
    SURVEY_LINE("Survey lines"),
    UNDERCUT("Undercuts"),
    REST_SEAT("Rest seats and clearance"),
    FINISH("Finishing");

    private final String title;

    Stage(String title) {
      this.title = title;
    }

    /** Heading in a list. */
    public String title() {
      return title;
    }
  }

  public Preparation {
    teeth = List.copyOf(teeth);
    components = List.copyOf(components);
    if (teeth.isEmpty()) {
      throw new IllegalArgumentException("a preparation concerns at least one tooth");
    }
  }
}
