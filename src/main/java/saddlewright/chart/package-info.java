/**
 * What is found in the mouth and on the surveyed cast: the state of every tooth and of the soft
 * tissues, and whether a lost tooth is to be replaced.
 *
 * <p>Findings only; what the denture does about them is {@code design}. Values that were not
 * charted are absent, never zero.
 */
package saddlewright.chart;
