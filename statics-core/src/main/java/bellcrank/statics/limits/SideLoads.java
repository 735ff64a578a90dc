package bellcrank.statics.limits;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Weight;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;

/** Given loads as single forces in place. Couples in the plane do nothing square to it. */
final class SideLoads {

  /** Sums of intensities below this share of their sizes are zero: the load is a couple. */
  private static final double ZERO = 1e-12;

  private SideLoads() {}

  /** A force in world coordinates, in m and N. */
  record Part(String name, Point at, Vector force) {}

  static List<Part> of(Balance balance, Load load) {
    Device device = balance.device();
    double factor = balance.loadCase().factor(load.name());
    if (load instanceof Force force) {
      Point at = posed(balance, force.body(), force.at());
      return List.of(new Part(force.name(), at, force.vector().times(factor)));
    }
    if (load instanceof Weight weight) {
      Point at =
          weight.at().isPresent()
              ? posed(balance, weight.body(), weight.at().get())
              : balance
                  .pose()
                  .frame(weight.body())
                  .apply(device.middleOfBars((Member) device.body(weight.body()).orElseThrow()));
      return List.of(new Part(weight.name(), at, device.gravity().times(weight.mass() * factor)));
    }
    return load instanceof SpreadLoad spread ? spread(balance, spread, factor) : List.of();
  }

  /** The resultant of a spread load; its two triangles apart where they cancel. */
  private static List<Part> spread(Balance balance, SpreadLoad spread, double factor) {
    Point drawnFrom = balance.device().point(spread.from());
    Point drawnTo = balance.device().point(spread.to());
    double metres =
        spread.per() == SpreadLoad.Per.HORIZONTAL
            ? Math.abs(drawnTo.x() - drawnFrom.x())
            : drawnFrom.distance(drawnTo);
    Point from = posed(balance, spread.member(), spread.from());
    Vector along = from.to(posed(balance, spread.member(), spread.to()));
    Direction way = spread.direction().orElseGet(() -> Direction.from(along).perpendicular());
    double a = spread.start() * metres / 2 * factor;
    double b = spread.end() * metres / 2 * factor;
    if (Math.abs(a + b) > ZERO * (Math.abs(a) + Math.abs(b))) {
      double share = (a + 2 * b) / (3 * (a + b));
      return List.of(new Part(spread.name(), from.plus(along.times(share)), way.times(a + b)));
    }
    return List.of(
        new Part(spread.name() + " start", from.plus(along.times(1 / 3.0)), way.times(a)),
        new Part(spread.name() + " end", from.plus(along.times(2 / 3.0)), way.times(b)));
  }

  /** Where a point of a body, or of a pin, is. */
  static Point posed(Balance balance, String body, String at) {
    Device device = balance.device();
    String carrier =
        device.body(body).isEmpty() && device.connection(body).orElse(null) instanceof Pin pin
            ? pin.bodies().get(0)
            : body;
    return balance.pose().frame(carrier).apply(device.point(at));
  }
}
