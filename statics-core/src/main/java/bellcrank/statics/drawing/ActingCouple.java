package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;

/**
 * A known couple on a body.
 *
 * @param part name of the connection or load that it comes from
 * @param on name of the body on which it acts
 * @param origin where it comes from
 * @param at where it is drawn, in m, in the world; a couple acts everywhere alike
 * @param moment in N·m, counter-clockwise positive
 */
public record ActingCouple(String part, String on, Origin origin, Point at, double moment) {}
