package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;

/**
 * A force on a body whose size is not known: statics alone does not fix it, or it is not decided.
 *
 * @param part name of the connection or sought quantity that it comes from
 * @param symbol what it is called in a drawing
 * @param on name of the body on which it acts
 * @param origin where it comes from
 * @param at where it acts, in m, in the world
 * @param along direction that a positive size would have
 */
public record OpenForce(
    String part, String symbol, String on, Origin origin, Point at, Direction along) {}
