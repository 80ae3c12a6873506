package saddlewright.desktop.sheet;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.input.MouseEvent;
import saddlewright.desktop.sheet.Offers.Offer;
import saddlewright.desktop.tools.Aim;

/** Places something over all places from where the button went down to where it is let go. */
final class StretchDrag implements Drag {
  private final SheetPane sheet;
  private final Offers offers;
  private final Ghost ghost;
  private final Aim from;
  private final Consumer<Offer> place;
  private Optional<Offer> meant = Optional.empty();
  private boolean moved;
  private boolean cancelled;

  /**
   * The drag.
   *
   * @param place what is done with what was meant when the button is let go
   */
  StretchDrag(SheetPane sheet, Offers offers, Ghost ghost, Aim from, Consumer<Offer> place) {
    this.sheet = sheet;
    this.offers = offers;
    this.ghost = ghost;
    this.from = from;
    this.place = place;
  }

  /** Whether it has come to another place than that where it began, so that it is no click. */
  boolean isMoved() {
    return moved;
  }

  @Override
  public void to(MouseEvent e) {
    if (cancelled) {
      return;
    }
    Optional<Aim> aim = sheet.aim(e.getX(), e.getY()).filter(a -> a.near().isPresent());
    moved = moved || aim.filter(a -> !a.tooth().equals(from.tooth())).isPresent();
    if (!moved) {
      return;
    }
    // Off the ridge the last place that was passed still counts.
    aim.flatMap(a -> offers.stretched(from, a, e.isAltDown()))
        .ifPresent(o -> meant = Optional.of(o));
    meant.ifPresent(o -> ghost.show(o.proposal(), o.more(), e.getX(), e.getY()));
  }

  @Override
  public void drop(MouseEvent e) {
    if (!cancelled) {
      meant.ifPresent(place);
    }
  }

  @Override
  public void cancel() {
    cancelled = true;
    moved = true;
    ghost.clear();
  }
}
