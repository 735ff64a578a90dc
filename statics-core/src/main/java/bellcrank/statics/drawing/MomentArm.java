package bellcrank.statics.drawing;

/**
 * A moment arm that is to be drawn.
 *
 * @param force name of the part whose force it is
 * @param about name of the point about which the moment is taken
 */
public record MomentArm(String force, String about) {}
