/**
 * The command line: what the window does, for scripts and classes, as text, JSON, SVG and exit
 * codes.
 *
 * <p>It may use everything but {@code desktop}. It decides nothing of its own: window and command
 * line call the same functions, so that they cannot disagree.
 */
package saddlewright.command;
