package bellcrank.statics.strength;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.strength.FilletWeld.Cut;
import bellcrank.statics.strength.FilletWeld.Plane;
import bellcrank.statics.strength.FilletWeld.Seam;
import bellcrank.statics.strength.PinJoint.Plate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/**
 * A random boom on a chain with a ring on its way, and a block on the floor that is shoved; both
 * sized by chance. The loads that grow are the cask at the head and the shove.
 *
 * @param shape slope of the boom in rad, share of the ring, sideways place of the hook
 * @param pull direction of the cask's rope off the vertical in rad
 * @param cask force at the head in N
 * @param dead mass at the ring in kg, and spread load on the boom in N/m; may be 0
 * @param choice numbers that choose section, material and method
 */
record Boom(List<Double> shape, double pull, double cask, List<Double> dead, int choice) {

  static final Variation.Multiple GROWING = Variation.of("cask", "shove");

  private static final List<Section> SECTIONS =
      List.of(
          Profiles.rectangle(0.06, 0.1).section(),
          Profiles.round(0.06).section(),
          Profiles.tee(0.08, 0.08, 0.01, 0.01, 0).section(),
          Profiles.angle(0.08, 0.06, 0.008).section(),
          Profiles.tube(0.06, 0.06, 0.004).section());

  /**
   * How it is drawn.
   *
   * @param angle turned by so many rad, gravity with it
   * @param scale lengths, all; forces grow with the square of it, so that stresses stay
   * @param reversed whether parts are named in the reverse order
   */
  record View(double angle, double scale, boolean reversed) {

    static final View DRAWN = new View(0, 1, false);

    Vector vector(double x, double y) {
      double c = Math.cos(angle);
      double s = Math.sin(angle);
      return Vector.of(x * c - y * s, x * s + y * c);
    }

    Point point(double x, double y) {
      Vector place = vector(x, y).times(scale);
      return Point.of(place.x(), place.y());
    }

    Vector force(double x, double y) {
      return vector(x, y).times(scale * scale);
    }

    Direction direction(double x, double y) {
      return Direction.from(vector(x, y).x(), vector(x, y).y());
    }

    Section section(Section one) {
      double l = scale;
      return new Section(
          one.name(),
          one.area() * l * l,
          one.top() * l,
          one.bottom() * l,
          one.inertia() * Math.pow(l, 4),
          one.firstMoment() * Math.pow(l, 3),
          one.webWidth() * l,
          one.sideInertia() * Math.pow(l, 4),
          one.sideReach() * l,
          one.thickest() * l,
          one.productOfInertia() * Math.pow(l, 4));
    }

    <T> List<T> order(List<T> all) {
      List<T> copy = new ArrayList<>(all);
      if (reversed) {
        Collections.reverse(copy);
      }
      return copy;
    }
  }

  static Arbitrary<Boom> any() {
    Arbitrary<List<Double>> shapes =
        Combinators.combine(number(-0.6, 1.2), number(0.2, 0.8), number(-1, 0.3))
            .as((a, b, c) -> List.of(a, b, c));
    Arbitrary<Double> mass = Arbitraries.frequencyOf(List.of(zero(1), some(2, 1, 80)));
    Arbitrary<Double> spread = Arbitraries.frequencyOf(List.of(zero(1), some(1, 10, 300)));
    Arbitrary<List<Double>> deads = Combinators.combine(mass, spread).as((a, b) -> List.of(a, b));
    return Combinators.combine(
            shapes,
            number(-0.5, 0.5),
            number(50, 4000),
            deads,
            Arbitraries.integers().between(0, 59))
        .as(Boom::new);
  }

  private static net.jqwik.api.Tuple.Tuple2<Integer, Arbitrary<Double>> zero(int often) {
    return net.jqwik.api.Tuple.of(often, Arbitraries.just(0.0));
  }

  private static net.jqwik.api.Tuple.Tuple2<Integer, Arbitrary<Double>> some(
      int often, double from, double to) {
    return net.jqwik.api.Tuple.of(often, number(from, to));
  }

  private static Arbitrary<Double> number(double from, double to) {
    return Arbitraries.doubles().between(from, to).ofScale(3);
  }

  boolean isTimber() {
    return choice / 5 % 3 == 0;
  }

  Method method() {
    return choice / 15 % 2 == 0 ? Method.ALLOWABLE : Method.RESISTANCE;
  }

  Material material() {
    return isTimber() ? Tried.SOFTWOOD : Tried.STEEL;
  }

  Section section() {
    return SECTIONS.get(choice % SECTIONS.size());
  }

  Device device() {
    return device(View.DRAWN);
  }

  Device device(View view) {
    double c = Math.cos(shape.get(0));
    double s = Math.sin(shape.get(0));
    double ring = 2 * shape.get(1);
    double squared = view.scale() * view.scale();
    DeviceBuilder builder =
        Device.named("boom and block")
            .gravity(view.vector(0, -9.80665))
            .point("hinge", view.point(0, 0))
            .point("ring", view.point(ring * c, ring * s))
            .point("head", view.point(2 * c, 2 * s))
            .point("hook", view.point(shape.get(2), 2.5))
            .point("toe", view.point(4, 0))
            .point("crown", view.point(4, 0.5));
    view.order(
            List.of(
                Member.of("boom", List.of("hinge", "ring", "head")),
                Member.of("block", List.of("toe", "crown"))))
        .forEach(builder::member);
    view.order(
            List.<Connection>of(
                Pin.smooth("hinge pin", "hinge", List.of("boom", "ground")),
                new Line("chain", new End("boom", "head"), new End("ground", "hook")),
                new ContactBase(
                    "floor",
                    "toe",
                    "block",
                    "ground",
                    view.direction(0, 1),
                    0.4 * view.scale(),
                    0.45,
                    0.4)))
        .forEach(builder::connect);
    List<Load> loads = new ArrayList<>();
    loads.add(
        new Force(
            "cask", "boom", "head", view.force(cask * Math.sin(pull), -cask * Math.cos(pull))));
    loads.add(new Force("shove", "block", "crown", view.force(30, 0)));
    loads.add(new Weight("stone", "block", Optional.of("toe"), 60 * squared));
    if (dead.get(0) > 0) {
      loads.add(new Weight("bucket", "boom", Optional.of("ring"), dead.get(0) * squared));
    }
    if (dead.get(1) > 0) {
      double intensity = dead.get(1) * view.scale();
      loads.add(
          new SpreadLoad(
              "vines",
              "boom",
              "hinge",
              "head",
              intensity,
              intensity / 2,
              Optional.of(view.direction(0, -1)),
              SpreadLoad.Per.LENGTH));
    }
    view.order(loads).forEach(builder::load);
    return builder.loadCase(new LoadCase("windy", Map.of("cask", 1.3), 1.1)).build();
  }

  Sizing sizing() {
    return sizing(View.DRAWN);
  }

  Sizing sizing(View view) {
    double mm = 1e-3 * view.scale();
    double squared = view.scale() * view.scale();
    Plate plate = new Plate("boom", 1, 10 * mm, 17 * mm, 30 * mm, 50 * mm, Tried.STEEL);
    Plate fork = new Plate("ground", 2, 6 * mm, 17 * mm, 30 * mm, 50 * mm, Tried.STEEL);
    PinJoint joint = new PinJoint("hinge pin", 16 * mm, 2, Tried.STEEL, List.of(plate, fork), mm);
    List<Seam> frame =
        List.of(
            new Seam(-20 * mm, 40 * mm, 20 * mm, 40 * mm),
            new Seam(-20 * mm, -30 * mm, 20 * mm, -30 * mm),
            new Seam(-20 * mm, -30 * mm, -20 * mm, 40 * mm));
    FilletWeld weld =
        new FilletWeld(
            "butt",
            "boom",
            Optional.of(new Cut("hinge", "ring", 0.1 * view.scale())),
            Optional.empty(),
            Plane.ACROSS,
            4 * mm,
            frame,
            Tried.STEEL,
            Optional.of(490e6));
    FilletWeld lug =
        new FilletWeld(
            "lug",
            "hinge pin",
            Optional.empty(),
            Optional.of("boom"),
            Plane.IN_PLANE,
            4 * mm,
            List.of(seam(view, 40, 20, 90, 20), seam(view, 40, -20, 90, -20)),
            Tried.STEEL,
            Optional.of(490e6));
    return Sizing.of(method())
        .with("boom", view.section(section()), material())
        .with("block", view.section(SECTIONS.get(0)), Tried.STEEL)
        .with(ColumnEnds.pinned("boom", "hinge", "head"))
        .with(joint)
        .with(weld)
        .with(lug)
        .with(Rating.of("chain", 3000 * squared, "tag"))
        .with(new ChainSeat("notch", "chain", "boom", view.direction(0, 1), 1.2, 0.3));
  }

  private static Seam seam(View view, double x1, double y1, double x2, double y2) {
    Point from = view.point(x1 * 1e-3, y1 * 1e-3);
    Point to = view.point(x2 * 1e-3, y2 * 1e-3);
    return new Seam(from.x(), from.y(), to.x(), to.y());
  }
}
