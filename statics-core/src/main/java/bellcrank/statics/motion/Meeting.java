package bellcrank.statics.motion;

/**
 * A point of one body and a straight edge of another that cannot go through one another: a course
 * ends where they meet.
 *
 * @param body name of the body with the point
 * @param point name of the point
 * @param other name of the body with the edge; may be the ground
 * @param from name of the point where the edge begins
 * @param to name of the point where it ends
 */
public record Meeting(String body, String point, String other, String from, String to) {}
