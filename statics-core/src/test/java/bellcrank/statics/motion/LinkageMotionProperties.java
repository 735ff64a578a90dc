package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.equilibrium.Advantage;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.BodyMotion;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Laws of motion on random linkages of one and more loops, from their poses alone. */
class LinkageMotionProperties {

  @Provide
  Arbitrary<DrivenLinkage> linkages() {
    return RandomLinkages.all();
  }

  private static Course course(DrivenLinkage linkage) {
    Travel travel = linkage.travel();
    // a loop drawn flat is a dead centre or a change point, or so near one that rounding decides
    for (ToDoubleFunction<Pose> branch : linkage.branches()) {
      Assume.that(Math.abs(branch.applyAsDouble(Pose.DRAWN)) > 0.02);
    }
    assertThat(travel).isInstanceOf(Course.class);
    Course course = (Course) travel;
    // differences need room on both sides
    Assume.that(course.greatest().drive() - course.least().drive() > 0.1);
    return course;
  }

  private static double range(Course course) {
    return course.greatest().drive() - course.least().drive();
  }

  private static double inside(Course course, double share) {
    return course.least().drive() + (0.1 + 0.8 * share) * range(course);
  }

  /** Differences of poses; where they do not settle, a dead centre is too near for them. */
  private static double rate(
      Course course, double at, DoubleUnaryOperator function, double settled) {
    PlainMotion.Derivative derivative = PlainMotion.derivative(function, at, 0.04 * range(course));
    Assume.that(derivative.doubt() <= settled);
    return derivative.value();
  }

  /** Powers of all loads, by differences of poses, are met by the effort of the equations. */
  @Property(tries = 250, edgeCases = EdgeCasesMode.NONE)
  void virtualWork(
      @ForAll("linkages") DrivenLinkage linkage,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    Course course = course(linkage);
    double at = inside(course, share);
    double sum = 0;
    double gross = 0;
    for (Load load : linkage.device().loads()) {
      double power = rate(course, at, PlainMotion.work(course, at, load), 1e-8);
      sum += power;
      gross += Math.abs(power);
    }
    double effort =
        Balance.of(course.device(), course.loadCase(), course.pose(at))
            .number(linkage.effort())
            .orElseThrow();
    assertThat(linkage.signedEffort(effort)).isCloseTo(-sum, within(1e-8 * (1 + gross)));
  }

  /** Pins lie in one another, what slides is in its guide, a rope keeps its length. */
  @Property(tries = 250, edgeCases = EdgeCasesMode.NONE)
  void connectionsFit(@ForAll("linkages") DrivenLinkage linkage) {
    Course course = course(linkage);
    Device device = linkage.device();
    for (int k = 0; k <= 12; k++) {
      double at = course.least().drive() + range(course) * k / 12;
      Pose pose = course.pose(at);
      assertThat(PlainMotion.misfit(device, pose, linkage.drive()))
          .as("at %s of %s to %s", at, course.least(), course.greatest())
          .isLessThan(2e-12 * device.size());
      assertThat(driven(linkage, pose)).isCloseTo(at, within(1e-11));
    }
  }

  private static double driven(DrivenLinkage linkage, Pose pose) {
    Device device = linkage.device();
    if (linkage.drive() instanceof Drive.Turn turn) {
      return pose.frame(turn.member()).turn();
    } else if (linkage.drive() instanceof Drive.Slide slide) {
      Point drawn = device.point(slide.point());
      return slide.along().times(1).dot(drawn.to(pose.frame(slide.body()).apply(drawn)));
    }
    Reeving rope = (Reeving) device.connection("rope").orElseThrow();
    return PlainRope.of(device, pose, rope.stops()).length()
        - PlainRope.of(device, Pose.DRAWN, rope.stops()).length();
  }

  /** A loop keeps the way in which it was put together; it lies flat only at a dead centre. */
  @Property(tries = 250, edgeCases = EdgeCasesMode.NONE)
  void noLoopChangesItsBranch(@ForAll("linkages") DrivenLinkage linkage) {
    Course course = course(linkage);
    for (int k = 1; k < 60; k++) {
      Pose pose = course.pose(course.least().drive() + range(course) * k / 60);
      for (ToDoubleFunction<Pose> branch : linkage.branches()) {
        double drawn = branch.applyAsDouble(Pose.DRAWN);
        assertThat(branch.applyAsDouble(pose) * Math.signum(drawn)).as("step %s", k).isPositive();
      }
    }
    for (CourseEnd end : List.of(course.least(), course.greatest())) {
      double flat = 1;
      for (ToDoubleFunction<Pose> branch : linkage.branches()) {
        flat = Math.min(flat, Math.abs(branch.applyAsDouble(course.pose(end.drive()))));
      }
      switch (end.why()) {
        case STATED -> assertThat(end.drive()).isIn(linkage.least(), linkage.greatest());
        case DEAD_CENTRE -> assertThat(flat).isLessThan(1e-5);
        case SLACK -> assertThat(linkage.effort()).isEqualTo("rope.tension");
        default -> throw new AssertionError(end);
      }
    }
  }

  /** Speeds, turning speeds and instant centres against differences of poses. */
  @Property(tries = 250, edgeCases = EdgeCasesMode.NONE)
  void velocitiesAreDifferencesOfPoses(
      @ForAll("linkages") DrivenLinkage linkage,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    Course course = course(linkage);
    Device device = linkage.device();
    double at = inside(course, share);
    List<BodyMotion> motions = course.velocities(at);
    for (Member member : device.members()) {
      BodyMotion motion =
          motions.stream()
              .filter(one -> one.body().equals(member.name()))
              .findFirst()
              .orElseThrow();
      double turning =
          rate(course, at, drive -> course.pose(drive).frame(member.name()).turn(), 1e-9);
      assertThat(motion.turning()).isCloseTo(turning, within(1e-9 * (1 + Math.abs(turning))));
      for (String point : device.points().keySet()) {
        Vector speed =
            Vector.of(
                rate(course, at, drive -> course.place(drive, member.name(), point).x(), 1e-9),
                rate(course, at, drive -> course.place(drive, member.name(), point).y(), 1e-9));
        Vector told = motion.velocityAt(course.place(at, member.name(), point));
        assertThat(told.minus(speed).norm()).isLessThan(2e-9 * (1 + speed.norm()));
        motion
            .centre()
            .ifPresent(
                centre -> {
                  Vector arm = centre.to(course.place(at, member.name(), point));
                  Vector round = arm.perpendicular().times(motion.turning());
                  assertThat(round.minus(speed).norm())
                      .isLessThan(2e-9 * (1 + speed.norm() + arm.norm()));
                });
      }
      assertThat(motion.centre().isPresent()).isEqualTo(Math.abs(motion.turning()) > 0);
    }
  }

  /** The ideal advantage is the ratio of the speeds at which effort and push work. */
  @Property(tries = 250, edgeCases = EdgeCasesMode.NONE)
  void theIdealAdvantageIsTheRatioOfSpeeds(
      @ForAll("linkages") DrivenLinkage linkage,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    Course course = course(linkage);
    double at = inside(course, share);
    String name = linkage.device().advantage().orElseThrow().resistance();
    Load resistance =
        linkage.device().loads().stream()
            .filter(load -> load.name().equals(name))
            .findFirst()
            .orElseThrow();
    double size =
        resistance instanceof Force force ? force.vector().norm() : ((Couple) resistance).moment();
    double speed = rate(course, at, PlainMotion.work(course, at, resistance), 1e-8) / size;
    // what does no work is no resistance
    Assume.that(Math.abs(speed) > 0.05);
    Balance balance = Balance.of(course.device(), course.loadCase(), course.pose(at));
    Advantage advantage = balance.advantage().orElseThrow();
    assertThat(advantage).isInstanceOf(Advantage.Ratio.class);
    double sign = linkage.drive() instanceof Drive.Length ? -1 : 1;
    assertThat(((Advantage.Ratio) advantage).ideal())
        .isCloseTo(-sign / speed, within(1e-9 * (1 + 1 / speed / speed)));
  }

  /** Effort and loads put in what the springs take up. */
  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void workInIsWorkOutAndStored(
      @ForAll("linkages") DrivenLinkage linkage,
      @ForAll @DoubleRange(min = 0, max = 0.4) double from,
      @ForAll @DoubleRange(min = 0.6, max = 1) double to) {
    Course course = course(linkage);
    double start = inside(course, from);
    double end = inside(course, to);
    Work work = course.work(start, end).orElseThrow();
    double stored = 0;
    double done = 0;
    double gross = Math.abs(work.effort());
    boolean follows = false;
    for (Load load : linkage.device().loads()) {
      boolean spring = load instanceof Spring || load instanceof TorsionSpring;
      follows |= load instanceof SpreadLoad wind && wind.direction().isEmpty();
      double one =
          PlainMotion.work(course, start, load).applyAsDouble(end)
              - PlainMotion.work(course, start, load).applyAsDouble(start);
      stored -= spring ? one : 0;
      done += spring ? 0 : one;
      gross += Math.abs(one);
    }
    assertThat(work.stored()).isCloseTo(stored, within(1e-10 * (1 + gross)));
    if (!follows) {
      // what turns with its member has no work of its ends alone
      assertThat(work.loads()).isCloseTo(done, within(1e-10 * (1 + gross)));
    }
    assertThat(work.lost()).isCloseTo(0, within(1e-8 * (1 + gross)));
    Work back = course.work(end, start).orElseThrow();
    assertThat(back.effort()).isCloseTo(-work.effort(), within(1e-10 * (1 + gross)));
  }

  /** Drawn anew where it has come to, a linkage goes back to where it came from. */
  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void thereAndBack(
      @ForAll("linkages") DrivenLinkage linkage,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    Course course = course(linkage);
    double at = inside(course, share);
    Pose there = course.pose(at);
    for (ToDoubleFunction<Pose> branch : linkage.branches()) {
      Assume.that(Math.abs(branch.applyAsDouble(there)) > 0.02);
    }
    Device device = linkage.device();
    Device drawn = Redrawn.at(device, there);
    Travel travel = Travel.of(drawn, linkage.drive(), Math.min(0, -at), Math.max(0, -at));
    assertThat(travel).isInstanceOf(Course.class);
    Course way = (Course) travel;
    assertThat(at < 0 ? way.greatest() : way.least())
        .isEqualTo(new CourseEnd(at == 0 ? 0 : -at, CourseEnd.Why.STATED, ""));
    Pose back = way.pose(-at);
    for (Member member : device.members()) {
      for (String point : List.of(member.points().get(0))) {
        Point place = there.frame(member.name()).apply(device.point(point));
        assertThat(back.frame(member.name()).apply(place).distance(device.point(point)))
            .isLessThan(1e-10 * device.size());
      }
      assertThat(back.frame(member.name()).turn())
          .isCloseTo(-there.frame(member.name()).turn(), within(1e-10));
    }
    double here =
        Balance.of(device, course.loadCase(), there).number(linkage.effort()).orElseThrow();
    double anew = Balance.of(drawn).number(linkage.effort()).orElseThrow();
    assertThat(anew).isCloseTo(here, within(1e-8 * (1 + Math.abs(here))));
  }
}
