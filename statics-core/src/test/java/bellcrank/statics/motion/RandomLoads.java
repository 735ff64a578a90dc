package bellcrank.statics.motion;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.Optional;

/** Loads of every kind on a linkage. */
final class RandomLoads {

  private RandomLoads() {}

  /**
   * Adds them: one force always, each other kind now and then.
   *
   * @param first a member with the points {@code at} and {@code from}
   * @param second a member with the point {@code tip}
   */
  static void add(
      DeviceBuilder builder,
      Shares shares,
      String first,
      String at,
      String second,
      String tip,
      String from) {
    builder.force(
        "push", second, tip, Direction.ofAngle(shares.number(-3, 3)).times(shares.number(20, 150)));
    if (shares.isBelow(0.6)) {
      builder.load(new Couple("couple", first, shares.number(-40, 40)));
    }
    if (shares.isBelow(0.7)) {
      builder.weight("mass", first, at, shares.number(0.5, 20));
    }
    if (shares.isBelow(0.6)) {
      builder
          .point("post", shares.number(-1, 3), shares.number(-2.5, -1.7))
          .load(
              new Spring(
                  "spring",
                  End.of(first, at),
                  End.of("ground", "post"),
                  shares.number(5, 200),
                  shares.number(0, 2)));
    }
    if (shares.isBelow(0.6)) {
      String other = first.equals(second) ? "ground" : second;
      builder.load(
          new TorsionSpring("twist", first, other, shares.number(1, 30), shares.number(-0.5, 0.5)));
    }
    double way = shares.number(-3, 3);
    if (shares.isBelow(0.6)) {
      boolean follows = shares.isBelow(0.5);
      Vector fixed = Direction.ofAngle(way).times(1);
      builder.load(
          new SpreadLoad(
              "wind",
              first,
              from,
              at,
              shares.number(-60, 60),
              shares.number(-60, 60),
              follows ? Optional.empty() : Optional.of(Direction.from(fixed)),
              SpreadLoad.Per.LENGTH));
    }
  }
}
