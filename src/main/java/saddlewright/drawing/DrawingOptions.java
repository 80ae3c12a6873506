package saddlewright.drawing;

import saddlewright.dentition.Notation;

/**
 * What a drawing shows.
 *
 * @param notation how teeth are numbered
 * @param anatomy gingival margins, ridges, sulci and landmarks
 * @param survey charted undercuts
 */
public record DrawingOptions(Notation notation, boolean anatomy, boolean survey) {
  public static final DrawingOptions DEFAULT = new DrawingOptions(Notation.FDI, true, true);
}
