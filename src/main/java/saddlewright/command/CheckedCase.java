package saddlewright.command;

import java.nio.file.Path;
import saddlewright.casefile.Assessment;

/** A case file with all that was derived from it. */
record CheckedCase(Path file, Assessment assessment) {}
