package bellcrank.statics.study.internal;

import java.util.ArrayList;
import java.util.List;

/** Places of the box from 0 to 1 in all directions. */
final class Spot {

  private static final long SEED = 20;

  private Spot() {}

  static List<double[]> corners(int inputs) {
    List<double[]> corners = new ArrayList<>();
    for (int bits = 0; bits < 1 << inputs; bits++) {
      double[] corner = new double[inputs];
      for (int i = 0; i < inputs; i++) {
        corner[i] = (bits >> i) & 1;
      }
      corners.add(corner);
    }
    return corners;
  }

  static List<double[]> someCorners(int inputs, int count) {
    Draws draws = Draws.of(SEED);
    List<double[]> corners = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      double[] corner = new double[inputs];
      for (int i = 0; i < inputs; i++) {
        corner[i] = draws.share() < 0.5 ? 0 : 1;
      }
      corners.add(corner);
    }
    return corners;
  }

  /**
   * Places spread evenly within the box: multiples of powers of the root of x^(n+1) = x + 1, their
   * whole parts taken off (Roberts, The unreasonable effectiveness of quasirandom sequences, 2018;
   * from memory).
   */
  static List<double[]> inner(int inputs, int count) {
    double root = 1.5;
    for (int k = 0; k < 60; k++) {
      root = Math.pow(1 + root, 1.0 / (inputs + 1));
    }
    List<double[]> places = new ArrayList<>();
    for (int k = 1; k <= count; k++) {
      double[] place = new double[inputs];
      for (int i = 0; i < inputs; i++) {
        double far = 0.5 + k / Math.pow(root, i + 1);
        place[i] = far - Math.floor(far);
      }
      places.add(place);
    }
    return places;
  }

  /** Places of a box of one direction, both ends among them. */
  static List<double[]> even(int count) {
    List<double[]> places = new ArrayList<>();
    for (int k = 0; k <= count; k++) {
      places.add(new double[] {(double) k / count});
    }
    return places;
  }

  /** The largest difference in any direction. */
  static double distance(double[] a, double[] b) {
    double distance = 0;
    for (int i = 0; i < a.length; i++) {
      distance = Math.max(distance, Math.abs(a[i] - b[i]));
    }
    return distance;
  }
}
