/**
 * The prescription in the window: the form, made of the table of fields, and how far it is filled
 * in. Which fields there are and what is missing is decided in {@code saddlewright.prescription};
 * here they get their controls. Typing changes the case through the worktable alone, and the form
 * follows the case in place, so that undo, and edits made elsewhere, show at once.
 */
package saddlewright.desktop.prescription;
