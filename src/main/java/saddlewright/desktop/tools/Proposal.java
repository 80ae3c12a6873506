package saddlewright.desktop.tools;

import saddlewright.casefile.Case;
import saddlewright.dentition.Arch;

/**
 * What a click would do, shown as a ghost before it is done.
 *
 * @param name names the edit, for its undo and beside the pointer
 * @param arch the arch that it changes
 * @param next the case as it would be
 */
public record Proposal(String name, Arch arch, Case next) {}
