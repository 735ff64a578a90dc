package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;

/**
 * Where a connection was cut.
 *
 * @param part name of the connection
 * @param on name of the body that is inside
 * @param at the place, in the world
 */
record Spot(String part, String on, Point at) {}
