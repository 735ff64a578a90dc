package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Problem;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Subject;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Meeting;
import bellcrank.statics.units.NearestName;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Finds what keeps a device from being driven as planned: names that it does not have. Problems
 * have {@code drive}, {@code meets 1} or {@code curves 1} as part, and the key as field.
 */
final class TravelCheck {

  static final String DRIVE = "drive";
  static final String MEETS = "meets ";
  static final String CURVES = "curves ";

  private final Device device;
  private final List<Problem> problems = new ArrayList<>();

  private TravelCheck(Device device) {
    this.device = device;
  }

  static List<Problem> problems(Device device, TravelPlan plan) {
    TravelCheck check = new TravelCheck(device);
    check.drive(plan.drive());
    for (int i = 0; i < plan.meetings().size(); i++) {
      check.meeting(MEETS + (i + 1), plan.meetings().get(i));
    }
    for (int i = 0; i < plan.curves().size(); i++) {
      check.curve(CURVES + (i + 1), plan.curves().get(i));
    }
    return check.problems;
  }

  private void problem(String part, String field, String value, String wanted) {
    problems.add(new Problem(part, field, Excerpt.quoted(value), wanted));
  }

  private void drive(Drive drive) {
    if (drive instanceof Drive.Turn turn) {
      if (!isMember(turn.member())) {
        String wanted = "the name of a member" + near(turn.member(), members());
        problem(DRIVE, "turn", turn.member(), wanted);
        return;
      }
      boolean known = turn.other().equals(Ground.NAME) || isMember(turn.other());
      if (!known || turn.other().equals(turn.member())) {
        problem(DRIVE, "against", turn.other(), "the name of another member, or ground");
      }
    } else if (drive instanceof Drive.Length length) {
      Connection found = device.connection(length.connection()).orElse(null);
      if (!(found instanceof Strut
          || found instanceof Line
          || found instanceof Reeving
          || found instanceof Screw)) {
        List<String> known = device.connections().stream().map(Connection::name).toList();
        String wanted = "the name of a strut, line, reeving or screw";
        problem(
            DRIVE,
            "length",
            length.connection(),
            found == null ? wanted + near(length.connection(), known) : wanted);
      }
    } else if (drive instanceof Drive.Slide slide) {
      moving(DRIVE, "slide", slide.body(), slide.point());
    }
  }

  private List<String> members() {
    return device.members().stream().map(Member::name).toList();
  }

  private static String near(String wrong, List<String> known) {
    return NearestName.of(wrong, known).map(one -> "; the nearest is \"" + one + '"').orElse("");
  }

  private boolean isMember(String name) {
    return device.body(name).filter(Member.class::isInstance).isPresent();
  }

  /** A point of a body that may move. */
  private void moving(String part, String field, String body, String point) {
    if (body.equals(Ground.NAME) || device.body(body).isEmpty()) {
      problem(part, field, body, "the name of a member or joint");
    } else if (!device.bodiesAt(point).contains(body)) {
      problem(part, "point", point, "a point of " + body);
    }
  }

  private void meeting(String part, Meeting meeting) {
    moving(part, "of", meeting.body(), meeting.point());
    if (device.body(meeting.other()).isEmpty() || meeting.other().equals(meeting.body())) {
      problem(part, "against", meeting.other(), "the name of another body, or ground");
    }
    Map<String, ?> points = device.points();
    boolean known = points.containsKey(meeting.from()) && points.containsKey(meeting.to());
    if (!known || device.point(meeting.from()).equals(device.point(meeting.to()))) {
      problem(part, "edge", meeting.from() + ", " + meeting.to(), "two points apart");
    }
  }

  private void curve(String part, Ask ask) {
    try {
      ask.check(device);
    } catch (ModelException e) {
      e.problems().forEach(one -> problem(part, "curves", ask.text(), one.wanted()));
      return;
    }
    if (!isNumber(ask)) {
      problem(
          part,
          "curves",
          ask.text(),
          "an ask for a number that balance gives, in no case: it is told for each");
    }
  }

  /** Whether an ask is for a number that balance gives, in no case. */
  static boolean isNumber(Ask ask) {
    boolean words =
        ask.measure() == Measure.OUTCOME
            || ask.measure() == Measure.VERDICT
            || ask.measure() == Measure.LINE;
    boolean limits =
        ask.subject() instanceof Subject.Extreme || ask.measure() == Measure.FRICTION_FACTOR;
    return !(words || limits || ask.loadCase().isPresent());
  }
}
