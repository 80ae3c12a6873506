/**
 * The sheet on the desk: the same drawing that is printed, as retained nodes that change only where
 * the drawing does, with what is pointed at, ghosts, selection and handles above it.
 */
package saddlewright.desktop.sheet;
