package saddlewright.desktop.preferences;

/** Whether the desk is light or dark. */
public enum Appearance {
  /** As the computer's own windows are. */
  SYSTEM,
  LIGHT,
  DARK
}
