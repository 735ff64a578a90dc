/**
 * Does it stand, and how far is it from giving way: one-sided and rough parts are decided here, by
 * linear programs that are exact in the plane.
 */
package bellcrank.statics.limits;
