package saddlewright.prescription;

import java.util.List;
import saddlewright.casefile.order.PreparationKind;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.ComponentId;
import saddlewright.rules.Source;

/**
 * One thing to be done in the mouth before the master impression, because the design asks for it.
 *
 * @param kind when it is done
 * @param arch the arch
 * @param teeth the teeth concerned, in arch order; never empty
 * @param surface where on the tooth, such as "mesial occlusal"; empty when it is the whole tooth
 * @param target what to aim at, with sizes
 * @param components what asks for it; empty when the chart does
 * @param reason the same in words
 * @param source where the sizes come from
 */
public record Preparation(
    PreparationKind kind,
    Arch arch,
    List<Tooth> teeth,
    String surface,
    String target,
    List<ComponentId> components,
    String reason,
    Source source) {

  public Preparation {
    teeth = List.copyOf(teeth);
    components = List.copyOf(components);
    if (teeth.isEmpty()) {
      throw new IllegalArgumentException("a preparation concerns at least one tooth");
    }
  }
}
