/**
 * Designs to begin from: those of the trade per Kennedy class that come with the program, the
 * user's own, and the case at hand. A template is an ordinary case file without a patient.
 */
package saddlewright.desktop.templates;
