package saddlewright.prescription;

import java.util.List;
import saddlewright.casefile.order.PreparationKind;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.ComponentId;
import saddlewright.rules.Source;

/**
 * One thing to be done in the mouth, because the design asks for it.
 *
 * @param key what tells it from the others
 * @param teeth the teeth concerned, in arch order; never empty
 * @param target what to aim at, with sizes
 * @param components what asks for it; empty when the chart does
 * @param reason the same in words
 * @param source where the sizes come from
 * @param warnings what to bear in mind
 */
public record Preparation(
    PreparationKey key,
    List<Tooth> teeth,
    String target,
    List<ComponentId> components,
    String reason,
    Source source,
    List<PreparationWarning> warnings) {

  public Preparation {
    teeth = List.copyOf(teeth);
    components = List.copyOf(components);
    warnings = List.copyOf(warnings);
    if (teeth.isEmpty()) {
      throw new IllegalArgumentException("a preparation concerns at least one tooth");
    }
  }

  /** When it is done. */
  public PreparationKind kind() {
    return key.kind();
  }

  public Arch arch() {
    return key.arch();
  }

  /** Where on the tooth, such as "mesial occlusal"; empty when it is the whole tooth. */
  public String surface() {
    return key.surface();
  }
}
