/**
 * What an edit leaves behind so that it can be taken back: whole cases, which share their parts.
 */
package saddlewright.desktop.history;
