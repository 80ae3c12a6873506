/**
 * Copying of designs and components through the clipboard, between cases, sides and arches. What
 * lies there is a case file without a patient, so that it can also be pasted as text.
 */
package saddlewright.desktop.copying;
