/**
 * Does it stand, and how far is it from giving way: one-sided and rough parts are decided here, by
 * linear programs that are exact in the plane.
 */
@NullMarked
package bellcrank.statics.limits;

import org.jspecify.annotations.NullMarked;
