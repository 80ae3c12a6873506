/**
 * Plane geometry in millimetres: points, vectors, paths, outlines, boxes and transforms.
 *
 * <p>Knows nothing of teeth, dentures or any toolkit. Curves are sampled into polylines fine enough
 * to print (chord error well under 0.02 mm), so that every painter draws exactly the same points.
 * Polygon union, offset and clipping are delegated to the JTS Topology Suite, which only this
 * package may import.
 */
package saddlewright.geometry;
