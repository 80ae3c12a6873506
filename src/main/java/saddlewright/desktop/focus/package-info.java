/**
 * Where the keyboard is: the parts of a window, how one goes from one to the next, what takes it.
 */
package saddlewright.desktop.focus;
