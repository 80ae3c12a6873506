package saddlewright.chart;

/** The way in which a tooth leans. */
public enum Tilt {
  MESIAL,
  DISTAL,
  BUCCAL,
  LINGUAL
}
