package saddlewright.rules;

import saddlewright.dentition.Arch;
import saddlewright.design.DesignEdit;

/** An edit that would clear a finding, ready to be previewed and taken. */
public record Remedy(String label, Arch arch, DesignEdit edit) {}
