package saddlewright.prescription;

import saddlewright.rules.Source;

/**
 * Something to bear in mind before a tooth is altered.
 *
 * @param sentence a sentence or two, with full stop
 * @param source who says so
 */
public record PreparationWarning(String sentence, Source source) {}
