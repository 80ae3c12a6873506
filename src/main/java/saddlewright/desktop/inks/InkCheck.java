package saddlewright.desktop.inks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import saddlewright.drawing.Ink;
import saddlewright.drawing.Palette;

/** Whether what is drawn in the inks of a palette can be seen and told apart. */
public final class InkCheck {
  /**
   * The least difference by which inks are told apart with certainty at a glance: six times what is
   * just noticed side by side, since lines are thin and lie apart (a choice of ours).
   */
  private static final double TOLD_APART = 12;

  /** Steps between a colour and black or white when a better one is sought. */
  private static final int STEPS = 200;

  /**
   * Inks that say by their colour which part it is. Those of an undercut and of the arm that enters
   * it are one colour on purpose.
   */
  private static final List<Ink> PARTS =
      List.of(
          Ink.REST,
          Ink.RETENTIVE,
          Ink.RECIPROCAL,
          Ink.GUIDE,
          Ink.INDIRECT,
          Ink.ACRYLIC_LINE,
          Ink.RELIEF);

  /**
   * An ink on a surface.
   *
   * @param least the contrast that is wanted
   * @param ratio the contrast there is
   */
  public record Standing(Ink ink, Ink ground, double least, double ratio) {
    public boolean passes() {
      // As it is shown, so that no 3.0:1 is said to be less than 3:1.
      return Math.round(ratio * 100) >= Math.round(least * 100);
    }
  }

  /** Two inks that would look alike. */
  public record Alike(Ink one, Ink other, ColourVision to) {}

  private final Palette palette;

  public InkCheck(Palette palette) {
    this.palette = palette;
  }

  private Colour colour(Ink ink) {
    return Colour.of(palette.hex(ink));
  }

  /** How an ink stands on its surfaces, or a surface under its inks, the worst first. */
  public List<Standing> standings(Ink ink) {
    Stream<Standing> all =
        InkUse.of(ink).kind() == InkUse.Kind.SURFACE
            ? Stream.of(Ink.values())
                .filter(other -> InkUse.of(other).grounds().contains(ink))
                .map(other -> standing(other, ink))
            : InkUse.of(ink).grounds().stream().map(ground -> standing(ink, ground));
    return all.sorted(Comparator.comparingDouble(s -> s.ratio() / s.least())).toList();
  }

  private Standing standing(Ink ink, Ink ground) {
    return new Standing(
        ink, ground, InkUse.of(ink).kind().least(), colour(ink).contrast(colour(ground)));
  }

  public boolean passes(Ink ink) {
    return standings(ink).stream().allMatch(Standing::passes);
  }

  /**
   * The nearest colour of the same hue, lighter or darker, with which this ink passes; empty where
   * there is none, because its surfaces are too unlike each other.
   */
  public Optional<String> nearest(Ink ink) {
    Colour now = colour(ink);
    for (int i = 1; i <= STEPS; i++) {
      double share = i / (double) STEPS;
      Optional<Colour> found =
          Stream.of(now.towards(Colour.BLACK, share), now.towards(Colour.WHITE, share))
              .filter(c -> new InkCheck(palette.with(Map.of(ink, c.hex()))).passes(ink))
              .min(Comparator.comparingDouble(c -> ColourVision.difference(now, c)));
      if (found.isPresent()) {
        return found.map(Colour::hex);
      }
    }
    return Optional.empty();
  }

  /** Which parts would be confused by people with a colour vision deficiency. */
  public List<Alike> alike() {
    List<Alike> out = new ArrayList<>();
    for (int i = 0; i < PARTS.size(); i++) {
      for (Ink other : PARTS.subList(i + 1, PARTS.size())) {
        Ink one = PARTS.get(i);
        for (ColourVision eyes : ColourVision.values()) {
          if (ColourVision.difference(eyes.seen(colour(one)), eyes.seen(colour(other)))
              < TOLD_APART) {
            out.add(new Alike(one, other, eyes));
          }
        }
      }
    }
    return out;
  }
}
