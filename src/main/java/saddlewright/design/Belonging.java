package saddlewright.design;

import java.util.List;

/** What belongs together in a design without being one component. */
public final class Belonging {
  private Belonging() {}

  /**
   * The component with all that belongs to it: to what stands on a tooth its rests, struts, arms
   * and plates, to a saddle its metalwork and what stands under it.
   */
  public static List<Component> to(ArchDesign design, Component component) {
    if (isOnTooth(component)) {
      return design.components().stream()
          .filter(c -> isOnTooth(c) && c.teeth().equals(component.teeth()))
          .toList();
    }
    if (isOfSaddle(component)) {
      return design.components().stream()
          .filter(
              c ->
                  c.equals(component)
                      || isOfSaddle(c) && c.teeth().stream().anyMatch(component.teeth()::contains))
          .toList();
    }
    return List.of(component);
  }

  private static boolean isOnTooth(Component c) {
    return c instanceof Rest
        || c instanceof Clasp
        || c instanceof ReciprocalArm
        || c instanceof GuidePlate
        || c instanceof GuidePlane
        || c instanceof MinorConnector
        || c instanceof Plating && c.teeth().size() == 1;
  }

  private static boolean isOfSaddle(Component c) {
    return c instanceof Saddle
        || c instanceof RetentionMesh
        || c instanceof FinishLine
        || c instanceof TissueStop
        || c instanceof Backing;
  }
}
