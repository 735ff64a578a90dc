/**
 * Drawings of devices and of bodies cut free, as SVG text: what acts on a body, to scale, with its
 * names and values. Places are in m in the world, forces in N on the body that is named, couples in
 * N·m counter-clockwise positive; on the sheet lengths are in its own units, y down.
 */
@NullMarked
package bellcrank.statics.drawing;

import org.jspecify.annotations.NullMarked;
