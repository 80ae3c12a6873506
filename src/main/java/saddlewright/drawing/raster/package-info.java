/** Paints a drawing into an image file; the only place that may use {@code java.awt}. */
package saddlewright.drawing.raster;
