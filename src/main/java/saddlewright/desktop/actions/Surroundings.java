package saddlewright.desktop.actions;

import java.util.List;

/** A part of the window where keys and the pointer do what no menu says. */
enum Surroundings {
  SHEET_BY_POINTER(
      "click",
      "again",
      "adding",
      "both-sides",
      "right",
      "wheel",
      "sideways",
      "move",
      "drag",
      "fine",
      "tab",
      "escape"),
  SHEET_BY_KEYS("arrows", "sites", "ends", "enter", "choices", "menu-key", "digits", "handle"),
  LIST("list-find", "list-menu", "list-several", "list-fold"),
  FINDINGS("finding", "waive"),
  FORM("answer", "day"),
  PICTURES("knob", "knob-step", "knob-write", "knob-clear", "knob-tooth"),
  QUICK_ENTRY("cell-type", "cell-way", "cell-block", "cell-fill", "cell-escape", "cell-arch"),
  PROJECTED("project"),
  PAGES("pages");

  private final List<String> keys;

  Surroundings(String... keys) {
    this.keys = List.of(keys);
  }

  /** Keys of the message file: each has its words, and the keys to press under ".keys". */
  List<String> keys() {
    return keys;
  }
}
