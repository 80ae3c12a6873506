package saddlewright.layout;

import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Zone;

/**
 * The way round a crown from one of its ends over one of its faces: degrees of sweep from the
 * contact at the origin, 90 in the middle of the first face, 180 at the far contact.
 */
record Sweep(End origin, Face first) {

  /** The direction in the crown's frame after so much sweep; not brought into 0 to 360. */
  double degrees(double sweep) {
    return PlacedTooth.degrees(origin) + sign() * sweep;
  }

  /** 1 when the sweep goes through rising angles of the crown's frame, otherwise −1. */
  double sign() {
    return (origin == End.MESIAL) == (first == Face.BUCCAL) ? 1 : -1;
  }

  /** Sweep to the middle of a zone, 0 to 360. */
  double to(Zone zone) {
    double turn = sign() * (PlacedTooth.degrees(zone) - PlacedTooth.degrees(origin));
    return (turn % 360 + 360) % 360;
  }
}
