/**
 * The card of a tooth: pictures in which its survey is set by hand, with the numbers beside them.
 * The pictures are schematic; what is told in them is what is charted.
 */
package saddlewright.desktop.survey.card;
