package bellcrank.statics.device;

import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Checks measure and endings of one ask; an ending without effect is refused as well. */
final class AskEndings {

  /** Measures that can be another on each body of a connection. */
  private static final Set<Measure> OF_A_BODY =
      EnumSet.of(
          Measure.X, Measure.Y, Measure.SIZE, Measure.DIRECTION, Measure.COUPLE, Measure.MOMENT);

  /** Measures that are the same for one part as for all of several equal ones. */
  private static final Set<Measure> NOT_SHARED =
      EnumSet.of(
          Measure.DIRECTION,
          Measure.OFFSET,
          Measure.LENGTH,
          Measure.RATIO_OF_TENSIONS,
          Measure.PLACE_OF_PEAK_NORMAL,
          Measure.PLACE_OF_PEAK_SHEAR,
          Measure.PLACE_OF_PEAK_MOMENT);

  private final Ask ask;
  private final Device device;
  private final String text;
  private final List<Problem> problems;

  /** Collects problems of an ask that is, or is a side of, the ask with the given text. */
  AskEndings(Ask ask, Device device, String text, List<Problem> problems) {
    this.ask = ask;
    this.device = device;
    this.text = text;
    this.problems = problems;
  }

  AskEndings of(Ask side) {
    return new AskEndings(side, device, text, problems);
  }

  boolean has(String kind, Set<Measure> measures) {
    if (measures.contains(ask.measure())) {
      return true;
    }
    List<Measure> named = measures.stream().filter(one -> one != Measure.VALUE).toList();
    problem(ask.measure().word(), "what " + kind + " has: " + PartMeasures.words(named));
    return false;
  }

  void on(Connection connection) {
    if (ask.on().isEmpty()) {
      return;
    }
    String body = ask.on().get();
    List<String> joined = connection.bodies().stream().distinct().toList();
    // the natural value of a pin or clamp is a size; that of the others is shared by their bodies
    boolean size =
        ask.measure() == Measure.VALUE
            && (connection instanceof Pin || connection instanceof Clamp);
    if (!size && !OF_A_BODY.contains(ask.measure())) {
      problem(
          "on " + AskText.name(body),
          "no body: the " + ask.measure().word() + " of a " + connection.kind() + " is not of one");
    } else if (!joined.contains(body)) {
      problem(body, "a body that " + connection.name() + " joins: " + String.join(", ", joined));
    }
  }

  /** The body of a point: any that has it or the ground, and named where several have it. */
  void onOneOf(List<String> bodies) {
    String wanted = "a body that has the point: " + String.join(", ", bodies);
    if (ask.on().isEmpty()) {
      if (bodies.size() > 1) {
        problem(ask.text(), wanted + "; write on BODY after it");
      }
    } else if (!bodies.contains(ask.on().get()) && !ask.on().get().equals(Ground.NAME)) {
      problem(ask.on().get(), bodies.isEmpty() ? "ground: no other body has the point" : wanted);
    }
  }

  void noOn() {
    if (ask.on().isPresent()) {
      problem(
          "on " + AskText.name(ask.on().get()),
          "no body: only the force of a connection is asked on one");
    }
  }

  void about(boolean allowed, boolean needed) {
    String word = ask.measure().word();
    if (ask.about().isEmpty()) {
      if (needed) {
        problem(word, "a point: " + word + " about POINT");
      }
      return;
    }
    String point = ask.about().get();
    if (allowed) {
      known("point", List.of(point), device.points().keySet());
    } else {
      problem("about " + AskText.name(point), "no point: this " + word + " is about none");
    }
  }

  void noStretch() {
    if (ask.stretch().isPresent()) {
      Stretch stretch = ask.stretch().get();
      problem(
          AskText.stretch(stretch).strip(),
          stretch.distance().isPresent()
              ? "no place: only normal, shear and moment of a member have one"
              : "no line: only the distance of a resultant, centre or load, and peaks of a member"
                  + " are along one");
    }
  }

  void each(int count) {
    if (ask.each() && count == 1) {
      problem("each", "a part with a count above 1");
    } else if (ask.each() && NOT_SHARED.contains(ask.measure())) {
      problem("each", "no each: the " + ask.measure().word() + " of equal parts is the same");
    }
  }

  void known(String kind, List<String> names, Collection<String> known) {
    for (String name : names) {
      if (!known.contains(name)) {
        problem(name, DeviceValidation.oneOf(kind, name, known));
      }
    }
  }

  void problem(String piece, String wanted) {
    problems.add(new Problem("ask", piece, text, wanted));
  }
}
