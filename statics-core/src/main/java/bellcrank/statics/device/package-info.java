/**
 * The immutable model of a device: bodies, connections, loads, cases and asks, with validation and
 * no solving. SI inside; x right, y up; counter-clockwise positive; places are the drawn pose in
 * world axes.
 *
 * <p>Signs are shown in figures on <a
 * href="{@docRoot}/bellcrank.statics/bellcrank/statics/device/doc-files/signs.html">the page of
 * signs</a>.
 */
@NullMarked
package bellcrank.statics.device;

import org.jspecify.annotations.NullMarked;
