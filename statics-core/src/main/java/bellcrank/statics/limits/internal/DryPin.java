package bellcrank.statics.limits.internal;

import java.util.ArrayList;
import java.util.List;

/**
 * Friction in a pin: its couple is at most the radius of the friction circle times the force, |M| ≤
 * r·sin φ·|F| (the friction circle of a journal bearing; see Engineering Statics: Open and
 * Interactive, section on journal bearings). Not convex; a choice is a sector of directions of F.
 */
final class DryPin implements Branch {

  private static final double FULL = 2 * Math.PI;

  private final int connection;
  private final int fx;
  private final int fy;
  private final int couple;
  private final double circle;

  /**
   * A pin.
   *
   * @param circle radius of the friction circle, scaled
   */
  DryPin(int connection, int fx, int fy, int couple, double circle) {
    this.connection = connection;
    this.fx = fx;
    this.fy = fy;
    this.couple = couple;
    this.circle = circle;
  }

  @Override
  public boolean isProportional() {
    return true;
  }

  @Override
  public Choice whole() {
    return new Choice(0, FULL);
  }

  @Override
  public List<Bound> outer(Choice choice) {
    List<Bound> bounds = sector(choice);
    if (!bounds.isEmpty()) {
      double middle = (choice.from() + choice.to()) / 2;
      // the chord: as large as |F| at both edges of the sector, larger between
      double stretch = circle / Math.cos((choice.to() - choice.from()) / 2);
      friction(bounds, stretch * Math.cos(middle), stretch * Math.sin(middle));
    }
    return bounds;
  }

  @Override
  public List<Bound> inner(Choice choice, double[] forces) {
    List<Bound> bounds = sector(choice);
    double size = Math.hypot(forces[fx], forces[fy]);
    double middle = (choice.from() + choice.to()) / 2;
    double c = size > 0 ? forces[fx] / size : Math.cos(middle);
    double s = size > 0 ? forces[fy] / size : Math.sin(middle);
    friction(bounds, circle * c, circle * s);
    return bounds;
  }

  private void friction(List<Bound> bounds, double perX, double perY) {
    int[] columns = {fx, fy, couple};
    bounds.add(new Bound(connection, Bound.Kind.PIN, 1, 0, columns, -perX, -perY, 1));
    bounds.add(new Bound(connection, Bound.Kind.PIN, -1, 0, columns, -perX, -perY, -1));
  }

  /** F lies in the sector; nothing for the full turn. */
  private List<Bound> sector(Choice choice) {
    List<Bound> bounds = new ArrayList<>();
    if (choice.to() - choice.from() < Math.PI) {
      int[] columns = {fx, fy};
      double a = choice.from();
      double b = choice.to();
      bounds.add(new Bound(connection, Bound.Kind.PART, 0, 0, columns, Math.sin(a), -Math.cos(a)));
      bounds.add(new Bound(connection, Bound.Kind.PART, 0, 0, columns, -Math.sin(b), Math.cos(b)));
    }
    return bounds;
  }

  @Override
  public double miss(double[] forces) {
    return Math.abs(forces[couple]) - circle * Math.hypot(forces[fx], forces[fy]);
  }

  @Override
  public List<Choice> split(Choice choice, double[] forces) {
    double width = choice.to() - choice.from();
    if (width >= Math.PI) {
      // quarters whose edges are off the axes, where forces like to lie
      List<Choice> quarters = new ArrayList<>();
      for (int k = 0; k < 4; k++) {
        double from = choice.from() + Math.PI / 4 + k * Math.PI / 2;
        quarters.add(new Choice(from, from + Math.PI / 2));
      }
      return quarters;
    }
    double at = choice.from() + width / 2;
    if (forces.length > 0) {
      double angle = Math.atan2(forces[fy], forces[fx]);
      double ahead = angle - choice.from();
      ahead -= FULL * Math.floor(ahead / FULL);
      // the chord is exact at an edge: one is put where the force is, but never too near another
      if (ahead > 0.05 * width && ahead < 0.95 * width) {
        at = choice.from() + ahead;
      }
    }
    return List.of(new Choice(choice.from(), at), new Choice(at, choice.to()));
  }

  @Override
  public List<Bound> atLimit(double[] forces, double slack) {
    if (Math.abs(miss(forces)) > slack) {
      return List.of();
    }
    int side = forces[couple] < 0 ? -1 : 1;
    return List.of(new Bound(connection, Bound.Kind.PIN, side, 0, new int[] {couple}, side));
  }

  @Override
  public double room(Bound bound, double[] forces) {
    return circle * Math.hypot(forces[fx], forces[fy]) - bound.sum(forces);
  }
}
