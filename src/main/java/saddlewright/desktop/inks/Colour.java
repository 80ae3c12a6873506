package saddlewright.desktop.inks;

import java.util.Locale;
import java.util.Optional;

/**
 * A colour of a screen, in the sRGB space.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Colour(int red, int green, int blue) {
  static final Colour BLACK = new Colour(0, 0, 0);
  static final Colour WHITE = new Colour(255, 255, 255);

  /** Share of the light of a white area that a viewer is taken to see of a black one (WCAG 2.2). */
  private static final double FLARE = 0.05;

  public Colour {
    for (int part : new int[] {red, green, blue}) {
      if (part < 0 || part > 255) {
        throw new IllegalArgumentException("a colour has parts from 0 to 255: " + part);
      }
    }
  }

  /** From #rrggbb; empty where the text is none. */
  public static Optional<Colour> parse(String text) {
    String s = text.strip();
    if (!s.matches("#[0-9a-fA-F]{6}")) {
      return Optional.empty();
    }
    int rgb = Integer.parseInt(s.substring(1), 16);
    return Optional.of(new Colour(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff));
  }

  /** From #rrggbb, as palettes have it. */
  static Colour of(String hex) {
    return parse(hex).orElseThrow(() -> new IllegalArgumentException("no colour: " + hex));
  }

  /** As #rrggbb. */
  public String hex() {
    return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
  }

  /**
   * Relative luminance, 0 for black to 1 for white: WCAG 2.2 (W3C Recommendation, 2023), "relative
   * luminance".
   */
  double luminance() {
    return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
  }

  /** The light of a part as a share of its most: IEC 61966-2-1, as WCAG 2.2 quotes it. */
  static double linear(int part) {
    double s = part / 255.0;
    return s <= 0.04045 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4);
  }

  /** The part that gives this share of light. */
  static int part(double linear) {
    double l = Math.max(0, Math.min(1, linear));
    double s = l <= 0.0031308 ? 12.92 * l : 1.055 * Math.pow(l, 1 / 2.4) - 0.055;
    return (int) Math.round(s * 255);
  }

  /** Contrast ratio with another, 1 to 21: WCAG 2.2, "contrast ratio". */
  public double contrast(Colour other) {
    double a = luminance();
    double b = other.luminance();
    return (Math.max(a, b) + FLARE) / (Math.min(a, b) + FLARE);
  }

  /** Part of the way to another, from 0 to 1. */
  Colour towards(Colour other, double share) {
    return new Colour(
        between(red, other.red, share),
        between(green, other.green, share),
        between(blue, other.blue, share));
  }

  private static int between(int from, int to, double share) {
    return (int) Math.round(from + (to - from) * share);
  }
}
