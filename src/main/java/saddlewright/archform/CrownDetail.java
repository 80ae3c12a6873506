package saddlewright.archform;

import saddlewright.geometry.Path;

/**
 * A line that tells one face of a crown from another: a fissure, a ridge, an incisal edge.
 *
 * @param path in the frame of the arch, mm
 */
public record CrownDetail(Kind kind, Path path) {

  /** What such a line is. */
  public enum Kind {
    /** Crest round the occlusal table, over cusp tips and marginal ridges; closed. */
    TABLE,
    /** Developmental groove or fissure. */
    GROOVE,
    /** Triangular, oblique, labial or lingual ridge. */
    RIDGE,
    /** One of the two borders of an incisal edge, or of the cusp arms of a canine. */
    EDGE,
    /** Border of the lingual fossa: marginal ridges and cingulum. */
    FOSSA,
    /** Depression between the lobes of a labial face. */
    LOBE
  }
}
