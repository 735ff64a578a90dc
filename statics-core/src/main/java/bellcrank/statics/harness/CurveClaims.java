package bellcrank.statics.harness;

import bellcrank.statics.device.Ask;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.Curve;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Optional;

/**
 * Holds how an answer changes over a course against limits.
 *
 * @param course the course
 * @param curve the answer over it
 * @param units units of the messages
 */
record CurveClaims(Course course, Curve curve, UnitSystem units) {

  /** A step of samples longer than this many of the shortest one leaves one out. */
  private static final double STEP_LEFT_OUT = 1.5;

  /** What is wrong with saying that the answer is nowhere below a limit. */
  Optional<Message> atLeast(String low) {
    Optional<Message> gap = leftOut("at least " + low);
    return gap.isPresent() ? gap : side("at least " + low, curve.least(), low, false);
  }

  /** What is wrong with saying that the answer is nowhere above a limit. */
  Optional<Message> atMost(String high) {
    Optional<Message> gap = leftOut("at most " + high);
    return gap.isPresent() ? gap : side("at most " + high, curve.greatest(), high, true);
  }

  /** What is wrong with saying that the answer stays between two limits. */
  Optional<Message> between(String low, String high) {
    String expected = "between " + low + " and " + high;
    Optional<Message> gap = leftOut(expected);
    if (gap.isPresent()) {
      return gap;
    }
    Optional<Message> below = side(expected, curve.least(), low, false);
    return below.isPresent() ? below : side(expected, curve.greatest(), high, true);
  }

  private Optional<Message> side(
      String expected, Optional<Curve.Sample> worst, String limit, boolean above) {
    StatedBound bound = StatedBound.parse(curve.ask().text(), limit, curve.dimension(), units);
    Curve.Sample sample = worst.orElseThrow();
    Setup there = setup(sample.drive());
    Numbers numbers = Numbers.of(there.shown());
    double over = above ? sample.value() - bound.si() : bound.si() - sample.value();
    if (over <= bound.room(numbers.scale())) {
      return Optional.empty();
    }
    String found =
        "it is "
            + numbers.apartFrom(bound.si(), sample.value(), bound.unit())
            + " at worst, "
            + place(sample.drive())
            + ": "
            + numbers.gap(over, bound.si(), bound.unit())
            + (above ? " above " : " below ")
            + bound.text();
    return Optional.of(message(expected, found, sample.drive()));
  }

  /** Where there is no answer nothing can be said, so it is told. */
  private Optional<Message> leftOut(String expected) {
    return missing()
        .map(
            drive -> {
              Answer answer = setup(drive).answer(curve.ask());
              String why =
                  answer instanceof Answer.Unanswered none ? ": " + none.explanation() : "";
              return message(expected, "there is no answer " + place(drive) + why, drive);
            });
  }

  /** A place of the course at which there is no sample; empty if there is none left out. */
  private Optional<Double> missing() {
    List<Curve.Sample> samples = curve.samples();
    double from = course.least().drive();
    double to = course.greatest().drive();
    if (samples.isEmpty() || samples.get(0).drive() > from) {
      return Optional.of(from);
    }
    if (samples.get(samples.size() - 1).drive() < to) {
      return Optional.of(to);
    }
    double shortest = Double.POSITIVE_INFINITY;
    for (int i = 1; i < samples.size(); i++) {
      shortest = Math.min(shortest, samples.get(i).drive() - samples.get(i - 1).drive());
    }
    for (int i = 1; i < samples.size(); i++) {
      double before = samples.get(i - 1).drive();
      if (samples.get(i).drive() - before > STEP_LEFT_OUT * shortest) {
        return Optional.of(Math.min(before + shortest, to));
      }
    }
    return Optional.empty();
  }

  private Message message(String expected, String found, double drive) {
    Ask ask = curve.ask();
    return Message.of(
            ask.text()
                + " on "
                + course.device().name()
                + " is expected to be "
                + expected
                + " over the whole course, but "
                + found
                + ".")
        .with(
            setup(drive).shown().remarked(place(drive)),
            new ConcernedBodies(course.device()).of(ask));
  }

  private Setup setup(double drive) {
    return Setup.of(course.device(), course.loadCase(), course.pose(drive)).with(units);
  }

  /** Where on the course, by the drive and as a share of the way. */
  private String place(double drive) {
    double way = course.greatest().drive() - course.least().drive();
    Dimension dimension = course.drive() instanceof Drive.Turn ? Dimension.ANGLE : Dimension.LENGTH;
    String amount = units.format(drive, dimension, 4);
    String where =
        course.drive() instanceof Drive.Turn turn
            ? "where " + turn.member() + " has turned by " + amount
            : course.drive() instanceof Drive.Length length
                ? "where " + length.connection() + " has lengthened by " + amount
                : "where " + slide((Drive.Slide) course.drive()) + " has moved by " + amount;
    long share = way > 0 ? Math.round(100 * (drive - course.least().drive()) / way) : 0;
    return where + " (" + share + " % of the way)";
  }

  private static String slide(Drive.Slide slide) {
    return slide.point() + " of " + slide.body();
  }
}
