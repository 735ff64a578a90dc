package bellcrank.statics.device;

import bellcrank.statics.geometry.Frame;
import java.util.HashMap;
import java.util.Map;

/**
 * Where the bodies of a device are, as displacements from the drawn pose. Bodies that are not named
 * are where they are drawn. A pose does not know whether it fits the device's connections.
 */
public final class Pose {

  /** The pose as drawn. */
  public static final Pose DRAWN = new Pose(Map.of());

  private final Map<String, Frame> frames;

  private Pose(Map<String, Frame> frames) {
    this.frames = frames;
  }

  /**
   * A pose from displacements.
   *
   * @param frames body name to displacement from the drawn pose
   * @return the pose
   */
  public static Pose of(Map<String, Frame> frames) {
    return new Pose(Map.copyOf(frames));
  }

  /**
   * This pose with one body elsewhere.
   *
   * @param body its name
   * @param frame its displacement from the drawn pose
   * @return the changed pose
   */
  public Pose with(String body, Frame frame) {
    Map<String, Frame> changed = new HashMap<>(frames);
    changed.put(body, frame);
    return new Pose(Map.copyOf(changed));
  }

  /**
   * Displacement of a body.
   *
   * @param body its name
   * @return from the drawn pose; the identity for the ground and for bodies that are not named
   */
  public Frame frame(String body) {
    return frames.getOrDefault(body, Frame.IDENTITY);
  }

  /**
   * Whether all bodies are as drawn.
   *
   * @return true if no body is named
   */
  public boolean isDrawn() {
    return frames.isEmpty();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Pose pose && frames.equals(pose.frames);
  }

  @Override
  public int hashCode() {
    return frames.hashCode();
  }

  @Override
  public String toString() {
    return "Pose " + frames;
  }
}
