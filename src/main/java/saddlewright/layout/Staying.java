package saddlewright.layout;

import java.util.Optional;
import saddlewright.design.ArchDesign;
import saddlewright.design.Component;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Relief;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;

/**
 * The components of another design on the same arch form that lie where they lay: they are the same
 * themselves, and so are all the others that their placement looks at.
 */
final class Staying {
  private final Layout before;
  private final boolean saddles;
  private final boolean connectors;
  private final boolean plates;
  private final boolean struts;

  private Staying(Layout before, ArchDesign after) {
    this.before = before;
    this.saddles = isSame(Saddle.class, before.design(), after);
    this.connectors = isSame(MajorConnector.class, before.design(), after);
    this.plates = isSame(GuidePlate.class, before.design(), after);
    this.struts = isSame(MinorConnector.class, before.design(), after);
  }

  static Staying between(Layout before, ArchDesign after) {
    return new Staying(before, after);
  }

  private static boolean isSame(
      Class<? extends Component> kind, ArchDesign before, ArchDesign after) {
    return before.all(kind).equals(after.all(kind));
  }

  /** Where the component lies, if it lies where it lay. */
  Optional<Laid> find(Component c) {
    return looksAtTheSame(c)
        ? before.find(c.id()).filter(l -> l.component().equals(c))
        : Optional.empty();
  }

  /** Whatever a placement asks its ground for must be told here. */
  private boolean looksAtTheSame(Component c) {
    if (c instanceof Saddle || c instanceof MajorConnector) {
      return saddles;
    }
    if (!saddles || !connectors) {
      return false;
    }
    if (c instanceof Rest) {
      return plates;
    }
    return c instanceof MinorConnector || c instanceof Relief ? struts : true;
  }
}
