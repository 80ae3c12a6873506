/**
 * The colours of the sheet as the user may choose them, and whether what is drawn in them can be
 * seen: contrast against what it stands on, and what people with a colour vision deficiency would
 * confuse. Which inks there are, and the program's own colours, stand in {@code
 * saddlewright.drawing}.
 */
package saddlewright.desktop.inks;
