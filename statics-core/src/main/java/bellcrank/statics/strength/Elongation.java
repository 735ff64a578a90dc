package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.equilibrium.BarForces;
import bellcrank.statics.equilibrium.InsideForce;
import bellcrank.statics.equilibrium.Piece;
import bellcrank.statics.equilibrium.Polynomial;
import java.util.List;

/**
 * How much longer a part gets under its normal force, and how far it is sheared: small, elastic
 * changes of length, found from the forces of the unchanged shape.
 *
 * <p>Source: Hooke's law, as in any textbook on strength of materials.
 */
public final class Elongation {

  private Elongation() {}

  /**
   * Elongation F·L/(E·A) under a force that is the same all along.
   *
   * @param force normal force in N, tension positive
   * @param length length in m, 0 or more
   * @param area area of the cross-section in m², above 0
   * @param elasticity modulus of elasticity E in Pa, above 0
   * @return in m, longer positive
   * @throws ModelException if length, area or modulus are out of range
   */
  public static double of(double force, double length, double area, double elasticity) {
    Positive.orZero("elongation", "length", length);
    Positive.check("elongation", "area", area);
    Positive.check("elongation", "modulus of elasticity", elasticity);
    return force * length / (elasticity * area);
  }

  /**
   * Elongation of a bar whose normal force changes along it, as under its own weight: ∫N ds/(E·A),
   * exact for its polynomials.
   *
   * @param forces forces inside the bar, all parallel parts together
   * @param sized section and material of one part
   * @param count number of parallel parts, 1 or more
   * @return in m, longer positive
   * @throws ModelException if the normal force cannot be told all along the bar, or the count is
   *     below 1
   */
  public static double of(BarForces forces, Sized sized, int count) {
    if (count < 1) {
      throw new ModelException("elongation", "count", count, "a whole number of 1 or more");
    }
    double sum = 0;
    for (Piece piece : forces.pieces()) {
      sum += integral(piece.curve(InsideForce.NORMAL), piece.start(), piece.end());
    }
    return of(sum / count, 1, sized.section().area(), sized.material().elasticity());
  }

  private static double integral(Polynomial curve, double from, double to) {
    List<Double> coefficients = curve.coefficients();
    double sum = 0;
    for (int power = coefficients.size() - 1; power >= 0; power--) {
      double up = power + 1.0;
      sum +=
          coefficients.get(power)
              / up
              * (Math.pow(to - curve.origin(), up) - Math.pow(from - curve.origin(), up));
    }
    return sum;
  }

  /**
   * How far one face of a block moves along the other, F·L/(G·A), bending left out.
   *
   * @param force shear force in N
   * @param length distance between the faces in m, 0 or more
   * @param area area of a face in m², above 0
   * @param shearModulus shear modulus G in Pa, above 0
   * @return in m, in the direction of the force
   * @throws ModelException if length, area or modulus are out of range
   */
  public static double ofShear(double force, double length, double area, double shearModulus) {
    Positive.orZero("shear movement", "length", length);
    Positive.check("shear movement", "area", area);
    Positive.check("shear movement", "shear modulus", shearModulus);
    return force * length / (shearModulus * area);
  }
}
