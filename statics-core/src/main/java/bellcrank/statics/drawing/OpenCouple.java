package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;

/**
 * A couple on a body whose size is not known.
 *
 * @param part name of the connection or sought quantity that it comes from
 * @param on name of the body on which it acts
 * @param origin where it comes from
 * @param at where it is drawn, in m, in the world
 */
public record OpenCouple(String part, String on, Origin origin, Point at) {}
