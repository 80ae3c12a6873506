/**
 * Where each tooth, gingival margin, ridge and landmark of one arch lies, in millimetres.
 *
 * <p>Frame: x to the viewer's right, y from the incisal midpoint back towards the molars, in both
 * arches; the patient's right has negative x. Knows the chart, not the design.
 */
package saddlewright.archform;
