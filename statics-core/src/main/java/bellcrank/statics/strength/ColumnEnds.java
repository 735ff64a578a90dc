package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;
import java.util.Optional;

/**
 * How a part in compression is held at its ends.
 *
 * @param part name of a strut, or of a member
 * @param from name of the point where the column begins; empty for a strut
 * @param to name of the point where it ends; empty for a strut
 * @param inPlane effective length over length for buckling in the plane of the device, above 0
 * @param side the same for buckling out of the plane, above 0
 * @param curve buckling curve of EN 1993-1-1; rules that know only one curve do not ask for it
 * @param statement the end condition in words, such as {@code pinned at both ends}
 */
public record ColumnEnds(
    String part,
    Optional<String> from,
    Optional<String> to,
    double inPlane,
    double side,
    Curve curve,
    String statement)
    implements Detail {

  /**
   * Buckling curves with their imperfection factor α.
   *
   * <p>Source: EN 1993-1-1:2005, Table 6.1.
   */
  public enum Curve {
    /** Curve a₀. */
    A0(0.13),
    /** Curve a: hot-finished hollow sections. */
    A(0.21),
    /** Curve b: angles. */
    B(0.34),
    /** Curve c: cold-formed hollow sections, solid sections, channels and tees. */
    C(0.49),
    /** Curve d. */
    D(0.76);

    private final double imperfection;

    Curve(double imperfection) {
      this.imperfection = imperfection;
    }

    /**
     * The imperfection factor.
     *
     * @return α, without unit
     */
    public double imperfection() {
      return imperfection;
    }
  }

  /**
   * Checks the factors.
   *
   * @param part name of a strut, or of a member
   * @param from name of the point where the column begins; empty for a strut
   * @param to name of the point where it ends; empty for a strut
   * @param inPlane effective length over length in the plane of the device, above 0
   * @param side the same out of the plane, above 0
   * @param curve buckling curve of EN 1993-1-1
   * @param statement the end condition in words
   * @throws ModelException if a factor is not finite or not above 0, or only one point is named
   */
  public ColumnEnds {
    Positive.check(part, "effective length factor in the plane", inPlane);
    Positive.check(part, "effective length factor out of the plane", side);
    if (from.isPresent() != to.isPresent()) {
      throw new ModelException(part, "column", "one point", "both ends, or none for a strut");
    }
  }

  /**
   * A strut or member pinned at both ends in both directions.
   *
   * @param strut name of a strut
   * @return effective length factors of 1, curve c
   */
  public static ColumnEnds pinned(String strut) {
    return new ColumnEnds(
        strut, Optional.empty(), Optional.empty(), 1, 1, Curve.C, "pinned at both ends");
  }

  /**
   * A stretch of a member pinned at both ends in both directions.
   *
   * @param member name of a member
   * @param from name of the point where the column begins
   * @param to name of the point where it ends
   * @return effective length factors of 1, curve c
   */
  public static ColumnEnds pinned(String member, String from, String to) {
    return new ColumnEnds(
        member, Optional.of(from), Optional.of(to), 1, 1, Curve.C, "pinned at both ends");
  }
}
