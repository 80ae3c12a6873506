package saddlewright.desktop.preview;

import java.util.Optional;

/** What a user has measured of screens, kept from one start to the next. */
public interface MeasuredScreens {
  /** Pixels in a millimetre of a screen, where it has been measured. */
  Optional<Double> pixelsPerMm(String screen);

  /** Keeps it, or forgets it. */
  void note(String screen, Optional<Double> pixelsPerMm);
}
