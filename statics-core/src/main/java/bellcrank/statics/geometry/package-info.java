/**
 * Points, vectors, directions, lines and frames of the plane; lengths in metres, angles in radians.
 */
package bellcrank.statics.geometry;
