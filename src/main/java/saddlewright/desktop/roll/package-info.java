/**
 * The list of teeth and components beside the sheet. It does in words all that the sheet does in
 * lines, for whoever works without seeing it, or would rather read.
 */
package saddlewright.desktop.roll;
