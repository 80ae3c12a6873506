package saddlewright.desktop;

/** Something that can be done at once about what a notice says. */
public record Offer(String label, Runnable action) {}
