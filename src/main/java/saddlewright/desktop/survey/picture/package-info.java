/**
 * Drawings in millimetres with knobs on them, by which values of the survey are set: how a knob is
 * clicked, dragged, turned and typed at is the same in all of them.
 */
package saddlewright.desktop.survey.picture;
