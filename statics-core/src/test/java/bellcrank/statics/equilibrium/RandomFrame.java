package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * A random member whose bars branch like a tree, on a pin at {@code P0} and held by a sought couple
 * somewhere: a device that fits in any turn about that pin.
 */
public final class RandomFrame {

  private final Random random;
  private final DeviceBuilder builder = Device.named("random frame").gravity(Vector.of(0, -9));
  private final List<Point> places = new ArrayList<>();
  private final List<Bar> bars = new ArrayList<>();

  private RandomFrame(long seed) {
    random = new Random(seed);
  }

  public static Device of(long seed) {
    return new RandomFrame(seed).device();
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private String point(Point place) {
    String name = "P" + places.size();
    places.add(place);
    builder.point(name, place);
    return name;
  }

  private String any() {
    return "P" + random.nextInt(places.size());
  }

  private Point place(String point) {
    return places.get(Integer.parseInt(point.substring(1)));
  }

  private Point inside(Bar bar, double share) {
    Point a = place(bar.start());
    return a.plus(a.to(place(bar.end())).times(share));
  }

  /** A place for the end of a bar that neither it nor the bar brings near to others. */
  private Optional<Point> clear(String from) {
    Point start = place(from);
    for (int tries = 0; tries < 50; tries++) {
      double angle = between(0, 2 * Math.PI);
      Vector way = Vector.of(Math.cos(angle), Math.sin(angle)).times(between(0.5, 3));
      Point end = start.plus(way);
      boolean clear =
          places.stream().noneMatch(one -> !one.equals(start) && isNear(one, start, end))
              && bars.stream().noneMatch(bar -> isNear(end, place(bar.start()), place(bar.end())));
      if (clear) {
        return Optional.of(end);
      }
    }
    return Optional.empty();
  }

  private static boolean isNear(Point point, Point a, Point b) {
    return a.distance(point) + point.distance(b) - a.distance(b) < 1e-3;
  }

  private Device device() {
    point(Point.of(between(-2, 2), between(-2, 2)));
    int count = 1 + random.nextInt(6);
    for (int i = 0; i < count; i++) {
      String from =
          !bars.isEmpty() && random.nextInt(3) == 0
              ? point(inside(bars.get(random.nextInt(bars.size())), between(0.2, 0.8)))
              : any();
      Optional<Point> end = clear(from);
      if (end.isEmpty()) {
        continue;
      }
      String to = point(end.get());
      bars.add(random.nextBoolean() ? new Bar(from, to) : new Bar(to, from));
    }
    builder.member(new Member("frame", List.of(), bars, List.of(), 1));
    builder.pin("pin", "P0", "frame", "ground");
    for (int i = 0; i < 5; i++) {
      load("load " + i);
    }
    builder.load(
        new Sought("hold", Sought.Want.COUPLE, "frame", Optional.of(any()), Optional.empty()));
    return builder.build();
  }

  private void load(String name) {
    switch (random.nextInt(4)) {
      case 0 -> builder.force(name, "frame", any(), Vector.of(between(-9, 9), between(-9, 9)));
      case 1 -> builder.load(new Couple(name, "frame", between(-5, 5), Optional.of(any())));
      case 2 -> builder.load(new Weight(name, "frame", Optional.empty(), between(0, 2)));
      default -> {
        Bar bar = bars.get(random.nextInt(bars.size()));
        String from = point(inside(bar, between(0, 0.4)));
        String to = point(inside(bar, between(0.6, 1)));
        boolean back = random.nextBoolean();
        builder.load(
            new SpreadLoad(
                name,
                "frame",
                back ? to : from,
                back ? from : to,
                between(-5, 5),
                between(-5, 5),
                random.nextBoolean()
                    ? Optional.empty()
                    : Optional.of(Direction.ofAngle(between(0, 6))),
                random.nextBoolean() ? SpreadLoad.Per.LENGTH : SpreadLoad.Per.HORIZONTAL));
      }
    }
  }
}
