package bellcrank.statics.harness;

import bellcrank.statics.device.Device;
import bellcrank.statics.drawing.ActingCouple;
import bellcrank.statics.drawing.ActingForce;
import bellcrank.statics.drawing.FreeBody;
import bellcrank.statics.drawing.OpenCouple;
import bellcrank.statics.drawing.OpenForce;
import bellcrank.statics.drawing.Resolution;
import bellcrank.statics.drawing.SpreadForce;
import bellcrank.statics.equilibrium.DirectionWords;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A free body as a table: each force with size, direction, components and place. */
final class FreeBodyTable {

  /** Share of the device's size within which a force acts at a point. */
  private static final double AT_POINT = 1e-6;

  private static final String OPEN = "not fixed";

  private final Setup.Shown shown;
  private final FreeBody body;
  private final Numbers numbers;
  private final TextTable table = new TextTable();

  private FreeBodyTable(Setup.Shown shown, FreeBody body) {
    this.shown = shown;
    this.body = body;
    numbers = Numbers.of(shown);
  }

  /** The lines for some bodies, or for the whole device if none is named. */
  static List<String> of(Setup.Shown shown, List<String> bodies) {
    Device device = shown.balance().device();
    if (device.members().isEmpty() && device.joints().isEmpty()) {
      return List.of();
    }
    FreeBody body =
        bodies.isEmpty() ? FreeBody.of(shown.balance()) : FreeBody.of(shown.balance(), bodies);
    return new FreeBodyTable(shown, body).lines();
  }

  private List<String> lines() {
    table.row("force", "on", "size", "direction", "x", "y", "at");
    forces().forEach(this::row);
    body.spreads().forEach(this::row);
    body.couples().forEach(this::row);
    body.openForces().forEach(this::row);
    body.openCouples().forEach(this::row);
    boolean open = !body.openForces().isEmpty() || !body.openCouples().isEmpty();
    if (body.reactions() && !open) {
      row("all together", "", sum(), "");
    }
    List<String> lines = new ArrayList<>();
    lines.add(head());
    lines.addAll(table.lines());
    if (!body.reactions()) {
      lines.add(
          "  There is no balance, so its supports and cuts carry nothing that could be told.");
    }
    return lines;
  }

  private String head() {
    String which =
        body.whole() && body.bodies().size() > 1
            ? "the whole device"
            : String.join(", ", body.bodies());
    return "Free body of " + which + (shown.remark().isEmpty() ? "" : ", " + shown.remark()) + ":";
  }

  /** A surface's force in its two parts; others as they are, for x and y have columns. */
  private List<ActingForce> forces() {
    return body.forces().stream()
        .flatMap(
            force ->
                force.resolution().filter(two -> !two.equals(Resolution.AXES)).isPresent()
                    ? force.components().stream()
                    : Stream.of(force))
        .toList();
  }

  private void row(ActingForce force) {
    row(force.symbol(), force.on(), force.vector(), place(force.on(), force.at()));
  }

  private void row(SpreadForce spread) {
    String where = "from " + place(spread.on(), spread.from()) + " to ";
    row(
        spread.part() + ", spread",
        spread.on(),
        spread.total(),
        where + place(spread.on(), spread.to()));
  }

  private void row(String name, String on, Vector vector, String at) {
    boolean zero = body.isZero(vector.norm());
    table.row(
        name,
        on(on),
        force(vector.norm()),
        zero ? "" : DirectionWords.of(vector),
        force(vector.x()),
        force(vector.y()),
        at);
  }

  private void row(ActingCouple couple) {
    boolean zero = body.isZeroCouple(couple.moment());
    String way = couple.moment() > 0 ? "counter-clockwise" : "clockwise";
    table.row(
        "couple of " + couple.part(),
        on(couple.on()),
        numbers.text(zero ? 0 : Math.abs(couple.moment()), Dimension.MOMENT),
        zero ? "" : way,
        "",
        "",
        "");
  }

  private void row(OpenForce force) {
    String along = DirectionWords.of(Vector.of(force.along().x(), force.along().y()));
    table.row(
        force.symbol(),
        on(force.on()),
        OPEN,
        "along " + along,
        "",
        "",
        place(force.on(), force.at()));
  }

  private void row(OpenCouple couple) {
    table.row("couple of " + couple.part(), on(couple.on()), OPEN, "", "", "", "");
  }

  /** On which body, where there are several. */
  private String on(String name) {
    return body.bodies().size() > 1 ? name : "";
  }

  private Vector sum() {
    Vector sum = Vector.ZERO;
    for (ActingForce force : body.forces()) {
      sum = sum.plus(force.vector());
    }
    for (SpreadForce spread : body.spreads()) {
      sum = sum.plus(spread.total());
    }
    return sum;
  }

  private String force(double newtons) {
    return numbers.text(body.isZero(newtons) ? 0 : newtons, Dimension.FORCE);
  }

  private String place(String on, Point at) {
    for (Map.Entry<String, Point> point : body.device().points().entrySet()) {
      Point there = body.pose().frame(on).apply(point.getValue());
      if (there.distance(at) <= AT_POINT * body.device().size()) {
        return point.getKey();
      }
    }
    return "("
        + numbers.text(at.x(), Dimension.LENGTH)
        + ", "
        + numbers.text(at.y(), Dimension.LENGTH)
        + ")";
  }
}
