package bellcrank.statics.explain;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.WrapAngle;
import bellcrank.statics.explain.Condition.Law;
import bellcrank.statics.explain.Condition.Rule;
import bellcrank.statics.explain.Unknown.Kind;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Event;
import bellcrank.statics.limits.LimitState;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What holds for the parts that are at their limit in a state, as equations beside those of
 * equilibrium. A law is left out where the state does not keep it, as where the ground adds to
 * friction.
 */
final class LimitLaws {

  /** Share by which a state may miss a law that it keeps. */
  static final double KEPT = 1e-6;

  /** Stands for a share of nothing: the component is in the law, but adds nothing to it. */
  private static final double HARDLY = 1e-30;

  private final Device device;
  private final LimitState state;
  private final Readings readings;
  private final List<Candidate> laws = new ArrayList<>();
  private Picture picture;

  private LimitLaws(LimitState state, Picture drawn) {
    device = state.balance().device();
    this.state = state;
    readings = new Readings(state.balance(), drawn);
    picture = drawn;
  }

  static LimitLaws of(LimitState state, Picture drawn) {
    LimitLaws found = new LimitLaws(state, drawn);
    state.how().events().stream()
        .sorted(Comparator.comparing(Event::part).thenComparing(Event::kind))
        .forEach(found::add);
    return found;
  }

  /** The picture, with the sizes of forces on dry pins as further unknowns. */
  Picture picture() {
    return picture;
  }

  List<Candidate> laws() {
    return List.copyOf(laws);
  }

  private void add(Event event) {
    Connection part = device.connection(event.part()).orElseThrow();
    switch (event.kind()) {
      case SLIDES -> slides(part);
      case LIFTS, GOES_SLACK -> nothing(part);
      case TIPS -> tips((ContactBase) part);
      case SLIPS_ROUND -> slips((Wrap) part);
      case TURNS -> turns((Pin) part);
      case RUNS -> runs((Screw) part);
      case SINKS -> {
        // how deep is not told by an equation that one solves by hand
      }
    }
  }

  /** Numbers of the unknowns of a part that are of a kind. */
  private List<Integer> all(String part, Kind kind) {
    return IntStream.range(0, picture.unknowns().size())
        .filter(k -> is(picture.unknowns().get(k), part, kind))
        .boxed()
        .toList();
  }

  private static boolean is(Unknown one, String part, Kind kind) {
    return one.part().equals(part) && one.kind() == kind;
  }

  private double value(int unknown) {
    return readings.given(unknown).orElse(0);
  }

  private void slides(Connection part) {
    List<Integer> friction = all(part.name(), Kind.FRICTION);
    List<Integer> normal = all(part.name(), Kind.NORMAL);
    if (friction.isEmpty() || normal.isEmpty()) {
      return;
    }
    List<Double> coefficients =
        part instanceof Contact c
            ? List.of(c.friction(), c.kineticFriction())
            : part instanceof ContactBase b
                ? List.of(b.friction(), b.kineticFriction())
                : List.of();
    double push = value(friction.get(0));
    for (double stated : coefficients) {
      double coefficient = stated * state.friction();
      double share = Math.copySign(coefficient, push);
      if (isKept(push, share * value(normal.get(0)))) {
        Law law = new Law(part.name(), Rule.FRICTION, List.of(coefficient));
        put(law, List.of(friction.get(0), normal.get(0)), List.of(1.0, -share), 0);
        return;
      }
    }
  }

  private void nothing(Connection part) {
    for (Kind kind : List.of(Kind.NORMAL, Kind.FRICTION, Kind.ROPE)) {
      for (int unknown : all(part.name(), kind)) {
        if (Math.abs(value(unknown)) <= KEPT * scale()) {
          put(new Law(part.name(), Rule.NOTHING, List.of()), List.of(unknown), List.of(1.0), 0);
        }
      }
    }
  }

  private double scale() {
    double scale = 0;
    for (int k = 0; k < picture.unknowns().size(); k++) {
      scale = Math.max(scale, Math.abs(value(k)));
    }
    return scale;
  }

  /** The normal force is drawn at the edge; the couple then is no force of its own. */
  private void tips(ContactBase base) {
    int couple = all(base.name(), Kind.COUPLE).get(0);
    int normal = all(base.name(), Kind.NORMAL).get(0);
    double arm = Math.copySign(base.width() / 2, value(couple));
    if (isKept(value(couple), arm * value(normal))) {
      Vector toEdge = picture.links().get(normal).get(0).force().perpendicular().times(-arm);
      picture = picture.moved(normal, toEdge).without(couple);
      Law law = new Law(base.name(), Rule.EDGE, List.of(base.width() / 2));
      put(law, List.of(couple, normal), List.of(1.0, -arm), 0);
    }
  }

  private void slips(Wrap wrap) {
    List<Integer> tensions = all(wrap.name(), Kind.ROPE);
    boolean first = value(tensions.get(0)) > value(tensions.get(1));
    int greater = tensions.get(first ? 0 : 1);
    int smaller = tensions.get(first ? 1 : 0);
    double angle = WrapAngle.of(device, wrap);
    double friction = wrap.friction() * state.friction();
    double most = Math.exp(friction * angle);
    double held = most * value(smaller);
    // what many turns could hold is beyond all numbers, and then they are not at their limit
    if (Double.isFinite(held) && isKept(value(greater), held)) {
      Law law = new Law(wrap.name(), Rule.POST, List.of(friction, angle));
      put(law, List.of(greater, smaller), List.of(1.0, -most), 0);
    }
  }

  /** A further unknown, the size of the force, and from it the couple. */
  private void turns(Pin pin) {
    List<Integer> components = all(pin.name(), Kind.COMPONENT);
    List<Integer> couples = all(pin.name(), Kind.COUPLE);
    if (components.size() != 2 || couples.size() != 1) {
      return;
    }
    double x = value(components.get(0));
    double y = value(components.get(1));
    double size = Math.hypot(x, y);
    double angle = Math.atan(pin.friction() * state.friction());
    double arm = Math.copySign(pin.radius() * Math.sin(angle), value(couples.get(0)));
    if (size == 0 || !isKept(value(couples.get(0)), arm * size)) {
      return;
    }
    int whole = picture.unknowns().size();
    Unknown unknown =
        new Unknown(
            Symbol.from("R", pin.name()),
            pin.name(),
            Kind.SIZE,
            picture.unknowns().get(components.get(0)).body(),
            Vector.ZERO,
            List.of(Ask.of(pin.name(), Measure.SIZE)));
    picture = picture.with(unknown);
    Law sum = new Law(pin.name(), Rule.SIZE, List.of());
    List<Double> shares = List.of(1.0, -share(x, size), -share(y, size));
    put(sum, List.of(whole, components.get(0), components.get(1)), shares, 0);
    loadAlone(pin, whole, Vector.of(x / size, y / size));
    Law law = new Law(pin.name(), Rule.PIN, List.of(pin.radius(), angle));
    put(law, List.of(couples.get(0), whole), List.of(1.0, -arm), 0);
  }

  /** Where nothing else is unknown on a body but couples, the loads have the size of the force. */
  private void loadAlone(Pin pin, int whole, Vector along) {
    for (Link link : picture.links().get(all(pin.name(), Kind.COMPONENT).get(0))) {
      for (int body : List.of(link.body(), link.other())) {
        BitSet cut = new BitSet();
        if (body < 0) {
          continue;
        }
        cut.set(body);
        boolean alone =
            picture.cutBy(cut).stream()
                .map(picture.unknowns()::get)
                .allMatch(one -> one.part().equals(pin.name()) || one.kind() == Kind.COUPLE);
        if (alone) {
          double loads = 0;
          for (KnownLoad load : picture.loads()) {
            loads +=
                Candidate.share(
                    new Condition.Forces(Direction.from(along)),
                    picture.loadOn(load, cut),
                    picture);
          }
          Direction line = Direction.from(loads > 0 ? along.times(-1) : along);
          Law law = new Law(pin.name(), Rule.LOADS, List.of(line.x(), line.y()));
          laws.add(
              new Candidate(
                  cut,
                  law,
                  List.of(whole),
                  List.of(1.0),
                  -Math.abs(loads),
                  Candidates.costOfLaw(1),
                  "law " + pin.name() + " loads " + body));
        }
      }
    }
  }

  private static double share(double component, double size) {
    double share = component / size;
    return Math.abs(share) <= Candidates.ZERO ? HARDLY : share;
  }

  private void runs(Screw screw) {
    int axial = all(screw.name(), Kind.AXIAL).get(0);
    List<Integer> sought =
        IntStream.range(0, picture.unknowns().size())
            .filter(
                k ->
                    picture.unknowns().get(k).kind() == Kind.TURNING
                        && picture.unknowns().get(k).body().equals(screw.name()))
            .boxed()
            .toList();
    double given = 0;
    for (KnownLoad load : picture.loads()) {
      boolean turns =
          device.load(load.name()).orElse(null) instanceof Couple couple
              && couple.member().equals(screw.name());
      given += turns ? load.size() : 0;
    }
    double couple = given + sought.stream().mapToDouble(this::value).sum();
    double slope = Math.atan(screw.lead() / (2 * Math.PI * screw.meanRadius()));
    double angle = Math.atan(screw.friction() * state.friction());
    for (double friction : List.of(angle, -angle)) {
      // a couple that drives the ends apart goes with compression
      double arm = screw.meanRadius() * Math.tan(slope + friction);
      if (slope + friction < Math.PI / 2 && isKept(couple, -arm * value(axial))) {
        List<Integer> unknowns = new ArrayList<>(sought);
        List<Double> coefficients = new ArrayList<>();
        sought.forEach(one -> coefficients.add(1.0));
        unknowns.add(axial);
        coefficients.add(arm);
        Law law = new Law(screw.name(), Rule.THREAD, List.of(screw.meanRadius(), slope, friction));
        put(law, unknowns, coefficients, given);
        return;
      }
    }
  }

  private static boolean isKept(double one, double other) {
    return Math.abs(one - other) <= KEPT * Math.max(Math.abs(one), Math.abs(other));
  }

  private void put(Law law, List<Integer> unknowns, List<Double> coefficients, double loads) {
    List<Integer> order =
        IntStream.range(0, unknowns.size())
            .filter(k -> coefficients.get(k) != 0)
            .boxed()
            .sorted(Comparator.comparing(unknowns::get))
            .toList();
    laws.add(
        new Candidate(
            new BitSet(),
            law,
            order.stream().map(unknowns::get).toList(),
            order.stream().map(coefficients::get).toList(),
            loads,
            Candidates.costOfLaw(unknowns.size()),
            "law " + law.part() + " " + law.rule() + " " + unknowns.get(0)));
  }
}
