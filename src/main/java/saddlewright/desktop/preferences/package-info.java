/**
 * How the user likes the editor: text size, notation, paper, light or dark, inks, the school of new
 * cases. Kept in one readable file of the user's settings folder and read once at the start; every
 * window follows the same {@link saddlewright.desktop.preferences.Preferences}. What belongs to a
 * case is in the case; who the prescriber is stands in {@link MyDetails}.
 */
package saddlewright.desktop.preferences;
