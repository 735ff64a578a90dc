package bellcrank.statics.motion.internal;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/** Abscissas and weights of the rule of Gauss and Legendre from 0 to 1. */
public final class GaussRule {

  private final GaussIntegrator rule;

  private GaussRule(GaussIntegrator rule) {
    this.rule = rule;
  }

  /** The rule with a number of abscissas: exact for polynomials of twice that degree, less one. */
  public static GaussRule of(int points) {
    return new GaussRule(new GaussIntegratorFactory().legendre(points, 0, 1));
  }

  /** An abscissa, above 0 and below 1. */
  public double share(int point) {
    return rule.getPoint(point);
  }

  /** Its weight; all together are 1. */
  public double weight(int point) {
    return rule.getWeight(point);
  }
}
