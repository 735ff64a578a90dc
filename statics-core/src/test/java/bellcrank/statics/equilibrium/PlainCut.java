package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Cuts a random frame by hand: every spread load is parted at the cut, and what hangs together with
 * one side of it is added up as single forces. Knows no curve and no graph.
 */
final class PlainCut {

  private static final double SAME = 1e-7;

  /** A force and couple at a drawn place. */
  private record Pull(Point drawn, Vector force, double couple) {}

  /** A linear load on a drawn segment; the forces are for the whole segment. */
  private record Spread(Point a, Point b, Vector start, Vector end) {}

  private final Device device;
  private final Frame frame;
  private final List<Bar> bars;
  private final List<Pull> given = new ArrayList<>();
  private final List<Spread> spreads = new ArrayList<>();

  PlainCut(Balance balance) {
    device = balance.device();
    frame = balance.pose().frame("frame");
    bars = device.members().get(0).bars();
    for (Load load : device.loads()) {
      load(load, factor(balance.loadCase(), load));
    }
    Point pin = device.point("P0");
    Vector held =
        Vector.of(
            balance.number("pin.x on frame").orElseThrow(),
            balance.number("pin.y on frame").orElseThrow());
    given.add(new Pull(pin, held, 0));
    Sought hold = device.sought().get(0);
    given.add(
        new Pull(
            device.point(hold.at().orElseThrow()),
            Vector.ZERO,
            balance.number("hold").orElseThrow()));
  }

  private static double factor(LoadCase loadCase, Load load) {
    return loadCase.dynamic()
        * Optional.ofNullable(loadCase.factors().get(load.name())).orElse(1.0);
  }

  private void load(Load load, double factor) {
    if (load instanceof Force force) {
      given.add(new Pull(device.point(force.at()), force.vector().times(factor), 0));
    } else if (load instanceof Couple couple) {
      Point at = device.point(couple.at().orElseThrow());
      given.add(new Pull(at, Vector.ZERO, couple.moment() * factor));
    } else if (load instanceof Weight weight) {
      double all = bars.stream().mapToDouble(this::length).sum();
      for (Bar bar : bars) {
        Vector whole = device.gravity().times(weight.mass() * factor * length(bar) / all);
        spread(device.point(bar.start()), device.point(bar.end()), whole, whole);
      }
    } else if (load instanceof SpreadLoad spread) {
      Point a = device.point(spread.from());
      Point b = device.point(spread.to());
      double metres =
          spread.per() == SpreadLoad.Per.HORIZONTAL ? Math.abs(b.x() - a.x()) : a.distance(b);
      Direction direction =
          spread.direction().orElseGet(() -> frame.apply(Direction.from(a, b)).perpendicular());
      spread(
          a,
          b,
          direction.times(spread.start() * metres * factor),
          direction.times(spread.end() * metres * factor));
    }
  }

  private double length(Bar bar) {
    return device.point(bar.start()).distance(device.point(bar.end()));
  }

  private void spread(Point a, Point b, Vector start, Vector end) {
    spreads.add(new Spread(a, b, start, end));
  }

  /** Two forces that do what a stretch of a linear load does (Gauss' rule of two points). */
  private static List<Pull> pulls(Spread spread, double from, double to) {
    List<Pull> pulls = new ArrayList<>();
    for (int sign = -1; sign <= 1; sign += 2) {
      double t = (from + to) / 2 + sign * Math.sqrt(3) / 6 * (to - from);
      double half = (to - from) / 2;
      Vector force = spread.start().times((1 - t) * half).plus(spread.end().times(t * half));
      pulls.add(new Pull(spread.a().plus(spread.a().to(spread.b()).times(t)), force, 0));
    }
    return pulls;
  }

  private List<Pull> pulls(Bar cut, Point place) {
    List<Pull> pulls = new ArrayList<>(given);
    for (Spread spread : spreads) {
      double length = spread.a().distance(spread.b());
      double t = spread.a().distance(place) / length;
      boolean through =
          on(cut, spread.a())
              && on(cut, spread.b())
              && t < 1
              && spread.b().distance(place) < length;
      pulls.addAll(pulls(spread, 0, through ? t : 1));
      if (through) {
        pulls.addAll(pulls(spread, t, 1));
      }
    }
    return pulls;
  }

  /** N, V and M from what acts before the cut, or with the sign turned from what acts after it. */
  List<Double> at(Bar cut, double s, boolean before) {
    Point a = device.point(cut.start());
    Direction along = Direction.from(a, device.point(cut.end()));
    Point place = a.plus(along.times(s));
    Set<Bar> side = side(cut, s, before);
    Point world = frame.apply(place);
    Vector u = frame.apply(along).times(1);
    Vector sum = Vector.ZERO;
    double moment = 0;
    for (Pull pull : pulls(cut, place)) {
      double way = a.to(pull.drawn()).x() * along.x() + a.to(pull.drawn()).y() * along.y();
      boolean here = on(cut, pull.drawn()) && (before ? way < s : way > s);
      if (here || side.stream().anyMatch(bar -> on(bar, pull.drawn()))) {
        Vector arm = world.to(frame.apply(pull.drawn()));
        sum = sum.plus(pull.force());
        moment += arm.x() * pull.force().y() - arm.y() * pull.force().x() + pull.couple();
      }
    }
    double sign = before ? 1 : -1;
    return List.of(
        -sign * (sum.x() * u.x() + sum.y() * u.y()),
        sign * (sum.y() * u.x() - sum.x() * u.y()),
        -sign * moment);
  }

  /** Other bars that hang together with one side of the cut. */
  private Set<Bar> side(Bar cut, double s, boolean before) {
    Point a = device.point(cut.start());
    Direction along = Direction.from(a, device.point(cut.end()));
    Set<Bar> found = new HashSet<>();
    Deque<Bar> open = new ArrayDeque<>();
    for (Bar bar : bars) {
      meeting(cut, bar)
          .filter(
              point -> {
                double way = a.to(point).x() * along.x() + a.to(point).y() * along.y();
                return before ? way < s : way > s;
              })
          .filter(point -> !bar.equals(cut) && found.add(bar))
          .ifPresent(point -> open.add(bar));
    }
    while (!open.isEmpty()) {
      Bar next = open.remove();
      for (Bar bar : bars) {
        if (!bar.equals(cut) && meeting(next, bar).isPresent() && found.add(bar)) {
          open.add(bar);
        }
      }
    }
    return found;
  }

  private Optional<Point> meeting(Bar one, Bar other) {
    for (Point point : device.points().values()) {
      if (on(one, point) && on(other, point)) {
        return Optional.of(point);
      }
    }
    return Optional.empty();
  }

  private boolean on(Bar bar, Point point) {
    Point a = device.point(bar.start());
    Point b = device.point(bar.end());
    return a.distance(point) + point.distance(b) - a.distance(b) < SAME * SAME;
  }
}
