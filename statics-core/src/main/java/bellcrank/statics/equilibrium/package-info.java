/**
 * Equilibrium of a device: does it stand, what does every connection carry, what still moves, which
 * forces statics alone cannot fix. Physical outcomes are results, never exceptions. Forces are in N
 * and are those <em>on</em> the body that is named; couples in N·m, counter-clockwise positive.
 *
 * <p>Signs are shown in figures on <a
 * href="{@docRoot}/bellcrank.statics/bellcrank/statics/device/doc-files/signs.html">the page of
 * signs</a>.
 */
@NullMarked
package bellcrank.statics.equilibrium;

import org.jspecify.annotations.NullMarked;
