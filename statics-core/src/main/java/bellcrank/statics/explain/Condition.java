package bellcrank.statics.explain;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import java.util.List;

/** What is said to add up to nothing. */
public sealed interface Condition {

  /**
   * Moments about a point.
   *
   * @param place name of the point; empty if no point of the device is there
   * @param about where it is, in m
   */
  record Moments(String place, Point about) implements Condition {}

  /**
   * Forces along a direction.
   *
   * @param along the direction
   */
  record Forces(Direction along) implements Condition {}

  /**
   * No equation of equilibrium but what a part does at its limit.
   *
   * @param part name of the part
   * @param rule what holds there
   * @param numbers what the rule is written with, in SI units: for friction μ; for an edge how far
   *     it is off the middle; for a post μ and the angle β; for a dry pin its radius and the angle
   *     of friction φ; for a thread its radius, the angle of its slope α, and φ with the sign that
   *     it has beside α; for loads the direction against which they add up
   */
  record Law(String part, Rule rule, List<Double> numbers) implements Condition {

    /**
     * Copies the list.
     *
     * @param part name of the part
     * @param rule what holds there
     * @param numbers what the rule is written with
     */
    public Law {
      numbers = List.copyOf(numbers);
    }
  }

  /** What holds for a part at its limit. */
  enum Rule {
    /** Friction is μ times the normal force. */
    FRICTION,
    /** What is about to come off or go slack carries nothing. */
    NOTHING,
    /** The normal force acts at the edge of a base. */
    EDGE,
    /** The greater tension round a post is e^(μβ) times the smaller. */
    POST,
    /** The friction couple of a pin is r·sin φ times its force. */
    PIN,
    /** The size of a force from its components. */
    SIZE,
    /** The size of a force from the loads, where nothing else pushes or pulls. */
    LOADS,
    /** The couple on a screw is r·tan(α ± φ) times its axial force. */
    THREAD;

    /**
     * Whether the rule is about couples.
     *
     * @return true if forces in it have arms
     */
    public boolean isOfCouples() {
      return this == EDGE || this == PIN || this == THREAD;
    }
  }
}
