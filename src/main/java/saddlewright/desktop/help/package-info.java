/**
 * What the window explains: help for each step, the glossary, the rules to read, what the program
 * is and whose work it uses. The texts are resources of the program, so that all of it is there
 * without a network; the pages of the rules are those of {@code saddlewright.rules}.
 */
package saddlewright.desktop.help;
