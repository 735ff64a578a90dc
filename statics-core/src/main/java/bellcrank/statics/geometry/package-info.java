/**
 * Points, vectors, directions, lines and frames of the plane; lengths in metres, angles in radians.
 *
 * <p>Signs are shown in figures on <a
 * href="{@docRoot}/bellcrank.statics/bellcrank/statics/device/doc-files/signs.html">the page of
 * signs</a>.
 */
@NullMarked
package bellcrank.statics.geometry;

import org.jspecify.annotations.NullMarked;
