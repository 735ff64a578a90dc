package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;
import java.util.List;
import java.util.Optional;

/**
 * A group of fillet welds that carries what goes through a cut of a bar, or what a connection does
 * to a body; its stresses are those of an elastic group of lines.
 *
 * @param name what it is called, such as {@code weld at the foot}
 * @param part the member, or the connection, whose force it carries
 * @param cut where the member is cut; empty if the weld carries the force of a connection
 * @param body the body on which the connection acts; empty if the member is cut
 * @param plane how the group lies
 * @param throat thickness of the throat in m, above 0: 0.707 of the leg of an equal-legged fillet
 * @param lines the welds as straight lines, at least one
 * @param material the weaker of the joined materials; its ultimate strength counts in EN 1993-1-8
 * @param electrode classified strength of the filler metal F_EXX in Pa; empty if it is not stated
 */
public record FilletWeld(
    String name,
    String part,
    Optional<Cut> cut,
    Optional<String> body,
    Plane plane,
    double throat,
    List<Seam> lines,
    Material material,
    Optional<Double> electrode)
    implements Detail {

  /** How a group of welds lies. */
  public enum Plane {
    /**
     * In the section of the bar: x of the seams is out of the plane of the device, y along the
     * height of the section, from the bar's axis to its left. N and M stretch it, V shears it. The
     * seams are to be symmetric about the plane of the device.
     */
    ACROSS,
    /**
     * In the plane of the device, as the seams of a lap. For the force of a connection x and y are
     * those of the device as it is drawn; for a cut x is along the bar from the cut, y to its left.
     * The couple about its centroid twists it.
     */
    IN_PLANE
  }

  /**
   * Where a member is cut.
   *
   * @param start name of the point where the bar starts
   * @param end name of the point where it ends
   * @param distance distance from the start in m, 0 or more
   */
  public record Cut(String start, String end, double distance) {

    /**
     * Checks the distance.
     *
     * @param start name of the point where the bar starts
     * @param end name of the point where it ends
     * @param distance distance from the start in m, 0 or more
     * @throws ModelException if the distance is negative or not finite
     */
    public Cut {
      Positive.orZero("cut", "distance", distance);
    }
  }

  /**
   * A straight weld from one point to another.
   *
   * @param x1 abscissa of its start in m
   * @param y1 ordinate of its start in m
   * @param x2 abscissa of its end in m
   * @param y2 ordinate of its end in m
   */
  public record Seam(double x1, double y1, double x2, double y2) {

    /**
     * Checks that it has a length.
     *
     * @param x1 abscissa of its start in m
     * @param y1 ordinate of its start in m
     * @param x2 abscissa of its end in m
     * @param y2 ordinate of its end in m
     * @throws ModelException if a number is not finite or both ends are one point
     */
    public Seam {
      double length = Math.hypot(x2 - x1, y2 - y1);
      if (!(length > 0 && Double.isFinite(length))) {
        throw new ModelException("weld", "length", length, "two different points");
      }
    }

    /**
     * Its length.
     *
     * @return in m, above 0
     */
    public double length() {
      return Math.hypot(x2 - x1, y2 - y1);
    }
  }

  /**
   * Checks the numbers and copies the list.
   *
   * @param name what it is called
   * @param part the member, or the connection, whose force it carries
   * @param cut where the member is cut; empty if the weld carries the force of a connection
   * @param body the body on which the connection acts; empty if the member is cut
   * @param plane how the group lies
   * @param throat thickness of the throat in m, above 0
   * @param lines the welds as straight lines, at least one
   * @param material the weaker of the joined materials
   * @param electrode classified strength of the filler metal in Pa, above 0, if stated
   * @throws ModelException if a number is out of range, there is no seam, or not exactly one of cut
   *     and body is stated
   */
  public FilletWeld {
    Positive.check(name, "throat", throat);
    if (electrode.isPresent()) {
      Positive.check(name, "electrode", electrode.get());
    }
    lines = List.copyOf(lines);
    if (lines.isEmpty()) {
      throw new ModelException(name, "lines", "none", "at least one seam");
    }
    if (plane == Plane.ACROSS && WeldGroup.of(lines).ix() == 0) {
      throw new ModelException(
          name, "lines", "all at one height", "seams at several heights, which can carry a moment");
    }
    if (cut.isPresent() == body.isPresent()) {
      throw new ModelException(
          name, "carries", cut.isPresent() ? "both" : "neither", "a cut of a bar or a connection");
    }
  }
}
