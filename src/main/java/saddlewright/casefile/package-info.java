/**
 * A case as it is kept: identity, charts, designs, profile, waivers and prescription details; all
 * else is derived. Reading and writing it lies in {@code casefile.json}.
 */
package saddlewright.casefile;
