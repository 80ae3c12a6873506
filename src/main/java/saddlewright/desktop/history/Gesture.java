package saddlewright.desktop.history;

/**
 * A doing of the user that may take many edits and is taken back as one: a drag, a word being
 * typed. Each is equal to itself only.
 */
public final class Gesture {}
