/** Quick entry: all teeth of an arch in one table, worked as a spreadsheet is. */
package saddlewright.desktop.survey.table;
