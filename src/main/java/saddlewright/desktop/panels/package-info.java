/** The panels beside the sheet: order of work, the subject, findings, prescription details. */
package saddlewright.desktop.panels;
