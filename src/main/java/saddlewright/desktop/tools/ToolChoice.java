package saddlewright.desktop.tools;

/**
 * A tool as it is offered in its step.
 *
 * @param id stable name, also of its button
 * @param label words on the button
 * @param hint what to do with it, in one sentence
 * @param tool what it does
 */
public record ToolChoice(String id, String label, String hint, Tool tool) {}
