/**
 * Numbers of statics and strength: axes of rotation, lever arms.
 *
 * <p>Gives numbers with their assumptions, in millimetres and degrees, never opinions; whether a
 * number is good enough is said by {@code rules}.
 */
package saddlewright.mechanics;
