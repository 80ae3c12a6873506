/**
 * Components carried into another mouth or the other arch: what they become there, and what of them
 * the mouth does not bear. Nothing is forbidden here; who carries them decides.
 */
package saddlewright.design.transfer;
