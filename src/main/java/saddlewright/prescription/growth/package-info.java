/** A design as it grows, stage by stage, with what was decided at each and why. */
package saddlewright.prescription.growth;
