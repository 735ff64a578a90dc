/**
 * What the ground under a flat foot does: the pressure it sends up, the load it bears, the sliding
 * it resists, and published soil, friction, anchor and ladder figures with their sources.
 *
 * <p>SI inside. Normal forces are pushes and so 0 or more. A base is seen with the direction of the
 * push upwards: couples are positive counter-clockwise and taken about the middle of the base, so a
 * normal force to the right of the middle has a positive couple. Where a figure does not exist, as
 * the pressure under an edge, the answer is empty.
 *
 * <p>Resistances carry no partial factor: put in characteristic soil values and the answer is a
 * characteristic resistance. The soil of a real yard is unknown until it has been looked at.
 */
@NullMarked
package bellcrank.statics.ground;

import org.jspecify.annotations.NullMarked;
