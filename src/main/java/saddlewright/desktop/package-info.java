/**
 * The window: canvas, tools, handles, findings, inspector and history.
 *
 * <p>Only here may JavaFX be imported, so that everything else runs and is tested without a
 * display. It may use everything but {@code command}, and computes nothing clinical itself.
 */
package saddlewright.desktop;
