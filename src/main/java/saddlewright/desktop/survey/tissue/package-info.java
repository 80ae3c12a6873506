/** The soft tissues of an arch as pictures: the arch unrolled, and a section through its sulcus. */
package saddlewright.desktop.survey.tissue;
