package saddlewright.desktop.sheet.handles;

import saddlewright.design.DesignEdit;
import saddlewright.geometry.Point;

/**
 * A place that a handle can have, and the edit that brings it there.
 *
 * @param at the place in the frame of the arch, mm
 * @param words the place in words, such as "24.5 mm" or "mesiobuccal"
 * @param edit what has to be done to the design
 */
public record Stop(Point at, String words, DesignEdit edit) {}
