package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Stretch;
import bellcrank.statics.device.Subject;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.equilibrium.internal.LoadSum;
import bellcrank.statics.equilibrium.internal.Solved;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Line2;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.util.Optional;

/** Reads given loads and their resultants. */
final class LoadAnswers {

  private static final double ZERO = 1e-12;

  private final Balance balance;
  private final Device device;
  private final Solved solved;

  LoadAnswers(Balance balance, Solved solved) {
    this.balance = balance;
    this.device = balance.device();
    this.solved = solved;
  }

  Answer load(String name, Ask ask) {
    Load load = device.load(name).orElseThrow();
    if (load instanceof Couple couple && device.body(couple.member()).isEmpty()) {
      // about a screw's own axis: not among the loads in the plane
      double moment = couple.moment() * balance.loadCase().factor(name);
      return new Answer.Value(moment, Dimension.MOMENT);
    }
    Point about = ask.about().map(device::point).orElseGet(() -> place(load));
    int body =
        load instanceof Spring spring
            ? device.bodyIndex(spring.first().body())
            : load instanceof TorsionSpring twist
                ? device.bodyIndex(twist.body())
                : Integer.MIN_VALUE;
    LoadSum sum = LoadSum.of(solved, name::equals, body, about);
    boolean turning = load instanceof Couple || load instanceof TorsionSpring;
    Measure measure =
        ask.measure() == Measure.VALUE ? (turning ? Measure.COUPLE : Measure.SIZE) : ask.measure();
    return measure(sum, measure);
  }

  private Point place(Load load) {
    return load instanceof Force force
        ? balance.pose().frame(force.body()).apply(device.point(force.at()))
        : Point.ORIGIN;
  }

  private static Answer measure(LoadSum sum, Measure measure) {
    return switch (measure) {
      case X -> new Answer.Value(sum.fx(), Dimension.FORCE);
      case Y -> new Answer.Value(sum.fy(), Dimension.FORCE);
      case COUPLE, MOMENT -> new Answer.Value(sum.moment(), Dimension.MOMENT);
      case DIRECTION -> Values.direction(sum.fx(), sum.fy(), sum.scale());
      default -> new Answer.Value(Math.hypot(sum.fx(), sum.fy()), Dimension.FORCE);
    };
  }

  Answer resultant(Subject.Resultant subject, Ask ask) {
    Point about = ask.about().map(device::point).orElse(Point.ORIGIN);
    LoadSum sum =
        LoadSum.of(
            solved,
            name -> subject.loads().isEmpty() || subject.loads().contains(name),
            Integer.MIN_VALUE,
            about);
    Optional<Line2> line = line(sum, about);
    return switch (ask.measure()) {
      case LINE ->
          line.<Answer>map(found -> new Answer.LineOfAction(found, Math.hypot(sum.fx(), sum.fy())))
              .orElseGet(LoadAnswers::noLine);
      case ARM ->
          line.<Answer>map(found -> new Answer.Value(found.arm(about), Dimension.LENGTH))
              .orElseGet(LoadAnswers::noLine);
      case DISTANCE ->
          line.map(found -> distance(found, ask.stretch().orElseThrow()))
              .orElseGet(LoadAnswers::noLine);
      default -> measure(sum, ask.measure());
    };
  }

  private static Answer noLine() {
    return Values.notDefined(
        "the loads add up to a couple or to nothing, which has no line of action");
  }

  private static Optional<Line2> line(LoadSum sum, Point about) {
    double size = Math.hypot(sum.fx(), sum.fy());
    if (size <= ZERO * sum.scale() || size == 0) {
      return Optional.empty();
    }
    // foot of the perpendicular: arm × force = moment; the square of a tiny force would vanish
    Direction along = Direction.from(sum.fx(), sum.fy());
    Vector arm = along.perpendicular().times(-sum.moment() / size);
    return Optional.of(Line2.of(about.plus(arm), along));
  }

  private Answer distance(Line2 line, Stretch along) {
    Point start = device.point(along.start());
    Direction sense = Direction.from(start, device.point(along.end()));
    return Line2.of(start, sense)
        .crossing(line)
        .<Answer>map(
            crossing -> {
              Vector r = start.to(crossing);
              return new Answer.Value(r.x() * sense.x() + r.y() * sense.y(), Dimension.LENGTH);
            })
        .orElseGet(
            () ->
                Values.notDefined(
                    "the line of action runs parallel to " + along.start() + "–" + along.end()));
  }
}
