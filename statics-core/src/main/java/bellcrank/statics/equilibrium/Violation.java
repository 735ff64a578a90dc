package bellcrank.statics.equilibrium;

import bellcrank.statics.units.Dimension;

/**
 * A condition of a connection that the forces of the balance break: a line that would have to push,
 * a roller that would have to pull, friction above μN. The balance then needs what the part cannot
 * give, so the device does not rest like this.
 *
 * @param part name of the connection
 * @param words what is broken, as a clause such as {@code would have to push}
 * @param needed what balance needs, SI
 * @param limit what the part can give at most (or at least, for a lower bound), SI
 * @param dimension of both values
 */
public record Violation(
    String part, String words, double needed, double limit, Dimension dimension) {}
