package saddlewright.casefile.order;

import java.util.List;
import java.util.Objects;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;

/**
 * A preparation that a person has added to those that follow from the design.
 *
 * @param id tells it from the others; a {@link PreparationMark} with the key {@code own/id} says
 *     how far it is
 * @param kind when in the order it is done
 * @param teeth the teeth concerned, of one arch; never empty
 * @param surface where on the tooth; may be empty
 * @param target what to aim at
 * @param reason why; may be empty
 */
public record OwnPreparation(
    String id,
    PreparationKind kind,
    List<Tooth> teeth,
    String surface,
    String target,
    String reason) {
  public OwnPreparation {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(surface);
    Objects.requireNonNull(reason);
    teeth = List.copyOf(teeth);
    if (id.isBlank() || target.isBlank()) {
      throw new IllegalArgumentException("an own preparation has an id and a target");
    }
    if (teeth.isEmpty() || teeth.stream().map(Tooth::arch).distinct().count() > 1) {
      throw new IllegalArgumentException(
          "an own preparation concerns at least one tooth, all of one arch");
    }
  }

  public Arch arch() {
    return teeth.get(0).arch();
  }
}
