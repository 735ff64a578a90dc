package bellcrank.statics.study;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Subject;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.limits.Limit;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Travel;
import bellcrank.statics.strength.Capacity;
import bellcrank.statics.strength.Crossing;
import bellcrank.statics.strength.Rules;
import bellcrank.statics.strength.Sizing;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.Optional;

/** Finds what a figure comes to for a model. */
final class FigureFinder {

  private final Model model;
  private final Device device;

  FigureFinder(Model model) {
    this.model = model;
    device = model.device();
  }

  static LoadCase loadCase(Figure figure, Device device) {
    Optional<String> named = named(figure);
    if (figure instanceof Figure.OfAsk one && one.ask().loadCase().isPresent()) {
      named = one.ask().loadCase();
    }
    return named.map(device::loadCase).orElseGet(() -> device.cases().get(0));
  }

  private static Optional<String> named(Figure figure) {
    if (figure instanceof Figure.OfAsk one) {
      return one.loadCase();
    }
    return figure instanceof Figure.FirstFailure failure
        ? failure.loadCase()
        : ((Figure.Stroke) figure).loadCase();
  }

  static String text(Figure figure) {
    if (figure instanceof Figure.OfAsk one) {
      Ask ask = one.ask();
      boolean stated = one.loadCase().isPresent() && ask.loadCase().isEmpty();
      return stated ? ask.inCase(one.loadCase().get()).text() : ask.text();
    }
    String in = named(figure).map(name -> " in " + name).orElse("");
    if (figure instanceof Figure.FirstFailure failure) {
      List<String> loads = failure.driving().loads();
      String of = loads.isEmpty() ? "all applied loads" : String.join(", ", loads);
      return "multiple of " + of + " at the first failure" + in;
    }
    return "stroke" + in;
  }

  FigureAnswer answer(Figure figure) {
    LoadCase loadCase = loadCase(figure, device);
    if (figure instanceof Figure.OfAsk one) {
      return answer(one.ask(), loadCase);
    }
    return figure instanceof Figure.FirstFailure failure
        ? failure(failure.driving(), loadCase)
        : stroke((Figure.Stroke) figure, loadCase);
  }

  private FigureAnswer answer(Ask ask, LoadCase loadCase) {
    return read(device, ask, Limits.answer(device, loadCase, Pose.DRAWN, model.foundations(), ask));
  }

  /** The number that an answer is, or why it is none. */
  static FigureAnswer read(Device device, Ask ask, Answer answer) {
    if (answer instanceof Answer.Value value) {
      return new FigureAnswer.Is(value.si(), value.dimension());
    }
    if (answer instanceof Answer.Unanswered none) {
      return new FigureAnswer.None(reason(ask, none.reason()), none.explanation());
    }
    throw new ModelException(
        device.name(), "ask", ask.text(), "an ask that is answered by a number");
  }

  private static FigureAnswer.Reason reason(Ask ask, Answer.Reason reason) {
    return switch (reason) {
      // downwards without end is no more than any number
      case UNLIMITED ->
          ask.subject() instanceof Subject.Extreme extreme && extreme.greatest()
              ? FigureAnswer.Reason.UNLIMITED
              : FigureAnswer.Reason.NOT_DEFINED;
      case NO_BALANCE -> FigureAnswer.Reason.NO_BALANCE;
      case UNDETERMINED -> FigureAnswer.Reason.UNDETERMINED;
      case NOT_DEFINED -> FigureAnswer.Reason.NOT_DEFINED;
      case NOT_DECIDED -> FigureAnswer.Reason.NOT_DECIDED;
    };
  }

  private FigureAnswer failure(Variation.Multiple driving, LoadCase loadCase) {
    if (model.sizing().isEmpty()) {
      return limit(driving, loadCase);
    }
    Sizing sizing = model.sizing().get();
    Capacity capacity =
        Capacity.of(
            device,
            loadCase,
            Pose.DRAWN,
            sizing,
            Rules.of(sizing.method()),
            driving,
            model.foundations());
    Optional<Crossing> first = capacity.first();
    // what holds at no multiple fails before any check, and how far it holds may be open
    boolean held = capacity.whyNotHeld(Double.MAX_VALUE).isEmpty();
    return held && first.isPresent()
        ? new FigureAnswer.Is(first.get().multiple(), Dimension.NUMBER)
        : limit(driving, loadCase);
  }

  private FigureAnswer limit(Variation.Multiple driving, LoadCase loadCase) {
    Limit limit = Limits.of(device, loadCase, Pose.DRAWN, model.foundations()).limit(driving);
    if (limit instanceof Limit.Never) {
      return new FigureAnswer.None(
          FigureAnswer.Reason.NO_BALANCE, "the device holds at no multiple of the driving loads");
    }
    if (limit instanceof Limit.NotDecided open) {
      return new FigureAnswer.None(FigureAnswer.Reason.NOT_DECIDED, open.why());
    }
    Limit.End end = ((Limit.Between) limit).greatest();
    if (end instanceof Limit.End.At at) {
      return new FigureAnswer.Is(Math.max(0, at.value()), Dimension.NUMBER);
    }
    if (end instanceof Limit.End.Open open) {
      return new FigureAnswer.None(FigureAnswer.Reason.NOT_DECIDED, open.why());
    }
    return new FigureAnswer.None(
        FigureAnswer.Reason.UNLIMITED, "nothing gives way, however great the driving loads are");
  }

  private FigureAnswer stroke(Figure.Stroke stroke, LoadCase loadCase) {
    Travel travel =
        Travel.of(device, loadCase, stroke.drive(), stroke.least(), stroke.greatest(), List.of());
    if (travel instanceof Course course) {
      double way = course.greatest().drive() - course.least().drive();
      Dimension dimension =
          stroke.drive() instanceof Drive.Turn ? Dimension.ANGLE : Dimension.LENGTH;
      return new FigureAnswer.Is(way, dimension);
    }
    return new FigureAnswer.None(
        FigureAnswer.Reason.NOT_DEFINED, ((Travel.Standstill) travel).reason().words());
  }
}
