package bellcrank.statics.equilibrium;

/**
 * A shape so close to a critical one that small errors in it change the answer much.
 *
 * @param point name of the point whose place matters most
 * @param move a small move of that point in m, along the axis that matters more
 * @param change greatest change of a force by that move, relative to the largest force; infinite if
 *     the device no longer holds then
 */
public record NearCritical(String point, double move, double change) {}
