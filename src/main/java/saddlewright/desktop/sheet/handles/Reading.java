package saddlewright.desktop.sheet.handles;

/**
 * What is read off while a handle is held.
 *
 * @param words such as "Keeps 3.2 mm clear of the gingival margins (at least 3 mm)"
 * @param warning whether the rules find fault with it
 */
public record Reading(String words, boolean warning) {}
