package saddlewright.rules;

/** A limit that a school sets, with its source. */
public record Threshold(double value, Source source) {}
