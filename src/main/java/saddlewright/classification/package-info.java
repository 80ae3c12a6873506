/**
 * What the gaps of an arch make of it: edentulous areas, the Kennedy class by Applegate's rules
 * with the reasons, and what carries each saddle (Craddock).
 *
 * <p>It reads the chart and knows nothing of designs or drawings: a standing third molar that a
 * design uses as an abutment is handed in. All is derived, never stored.
 */
package saddlewright.classification;
