/**
 * Points, vectors, directions, lines and frames of the plane; lengths in metres, angles in radians.
 */
@NullMarked
package bellcrank.statics.geometry;

import org.jspecify.annotations.NullMarked;
