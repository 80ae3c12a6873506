/**
 * What is charted and surveyed of a tooth, as single items that can be written and read back, with
 * what was published of them. Pictures and tables of them are in the packages below.
 */
package saddlewright.desktop.survey;
