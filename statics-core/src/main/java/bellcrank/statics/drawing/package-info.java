/**
 * Drawings of devices and of bodies cut free, as SVG text: what acts on a body, to scale, with its
 * names and values. Places are in m in the world, forces in N on the body that is named, couples in
 * N·m counter-clockwise positive; on the sheet lengths are in its own units, y down.
 *
 * <p>Signs are shown in figures on <a
 * href="{@docRoot}/bellcrank.statics/bellcrank/statics/device/doc-files/signs.html">the page of
 * signs</a>.
 */
@NullMarked
package bellcrank.statics.drawing;

import org.jspecify.annotations.NullMarked;
