/**
 * All that can be done in a window, as its menus have it: found by words, run by keys, listed on a
 * page. The menus are the one place where an action is named and bound; what is here reads them.
 */
package saddlewright.desktop.actions;
