/**
 * The denture as it was designed: a sealed family of components, each a value with an id, the
 * design of one arch, and the edits that lead from one design to the next.
 *
 * <p>Components know which tooth, site or span they belong to, never where that lies in
 * millimetres, how they are drawn, or whether they are wise.
 */
package saddlewright.design;
