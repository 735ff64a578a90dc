package bellcrank.statics.study.internal;

/**
 * A number together with the rate at which it changes with an input. Sums, products and functions
 * of such numbers follow the rules of differentiation, so rates are exact to rounding.
 *
 * @param value the number
 * @param rate its rate
 */
public record Dual(double value, double rate) {

  static final Dual ZERO = of(0);
  static final Dual ONE = of(1);

  static Dual of(double value) {
    return new Dual(value, 0);
  }

  Dual plus(Dual other) {
    return new Dual(value + other.value, rate + other.rate);
  }

  Dual minus(Dual other) {
    return new Dual(value - other.value, rate - other.rate);
  }

  Dual negative() {
    return new Dual(-value, -rate);
  }

  Dual times(Dual other) {
    return new Dual(value * other.value, rate * other.value + value * other.rate);
  }

  Dual times(double factor) {
    return new Dual(value * factor, rate * factor);
  }

  Dual over(Dual other) {
    double quotient = value / other.value;
    return new Dual(quotient, (rate - quotient * other.rate) / other.value);
  }

  Dual squared() {
    return times(this);
  }

  /** The root; at zero its rate is not defined and infinite or not a number. */
  Dual root() {
    double root = Math.sqrt(value);
    return new Dual(root, rate == 0 ? 0 : rate / (2 * root));
  }

  Dual exp() {
    double power = Math.exp(value);
    return new Dual(power, rate * power);
  }

  Dual abs() {
    return value < 0 ? negative() : this;
  }

  Dual cosine() {
    return new Dual(Math.cos(value), -rate * Math.sin(value));
  }

  Dual sine() {
    return new Dual(Math.sin(value), rate * Math.cos(value));
  }

  Dual tangent() {
    double tangent = Math.tan(value);
    return new Dual(tangent, rate * (1 + tangent * tangent));
  }

  static Dual hypot(Dual x, Dual y) {
    double length = Math.hypot(x.value, y.value);
    double product = x.value * x.rate + y.value * y.rate;
    return new Dual(length, x.rate == 0 && y.rate == 0 ? 0 : product / length);
  }

  /** The angle of a vector from the right. */
  static Dual angle(Dual x, Dual y) {
    double squared = x.value * x.value + y.value * y.value;
    double turning = x.value * y.rate - y.value * x.rate;
    return new Dual(Math.atan2(y.value, x.value), turning == 0 ? 0 : turning / squared);
  }
}
