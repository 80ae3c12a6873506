/** The pages of the prescription in a window: looked at, printed, saved and issued. */
package saddlewright.desktop.preview;
