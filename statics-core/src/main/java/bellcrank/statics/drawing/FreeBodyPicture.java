package bellcrank.statics.drawing;

import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.ground.Foundation;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Puts the picture of a free body together. */
final class FreeBodyPicture {

  private static final int MOST_SLOPES = 4;

  private final Balance balance;
  private final FreeBody body;
  private final DrawingOptions options;
  private final Amount amount;
  private final Places places;
  private final List<BaseStrip> pressures;
  private final Scene scene = new Scene();
  private final List<ActingForce> shown = new ArrayList<>();
  private final List<ActingForce> told = new ArrayList<>();
  private final List<String> words = new ArrayList<>();
  private final Map<ActingForce, Arrow> arrows = new LinkedHashMap<>();

  FreeBodyPicture(Balance balance, FreeBody body, DrawingOptions options, List<Foundation> ground) {
    this.balance = balance;
    this.body = body;
    this.options = options;
    amount = new Amount(options.units());
    places = new Places(body.device(), body.pose());
    pressures = new PressureReader(balance, body, ground).read();
    for (ActingForce force : body.forces()) {
      told.addAll(options.components() ? force.components() : List.of(force));
    }
    told.stream().filter(force -> !body.isZero(force.size())).forEach(shown::add);
  }

  String svg() {
    View view = view();
    BodiesPicture bodies = new BodiesPicture(scene, view, places, body.bodies());
    bodies.bodies(body.loadPlaces());
    bodies.inside();
    Key key = new Key();
    KeyRows rows = new KeyRows(key, amount);
    Optional<Freedom> motion = motion();
    rows.origins(
        origins(),
        !body.openForces().isEmpty() || !body.openCouples().isEmpty(),
        motion.isPresent());
    words.add(opening());
    words.addAll(new ForceWords(body, amount).sentences(told));
    pressures.forEach(one -> words.add(one.words(amount)));
    new PressureShapes(scene, view, amount).draw(pressures, key);
    forces(view, rows);
    motion.ifPresent(freedom -> motion(freedom, view));
    lines(view);
    measurements(view);
    bodies.names();
    return new Sheet(scene, heading(), words, key).svg();
  }

  private View view() {
    Extent extent = new Extent(places);
    body.bodies().forEach(extent::body);
    shown.forEach(force -> extent.place(force.at()));
    body.openForces().forEach(force -> extent.place(force.at()));
    body.spreads().forEach(spread -> extent.place(spread.from()).place(spread.to()));
    return View.of(extent.shown());
  }

  private String heading() {
    String device = body.device().name();
    return body.whole()
        ? device + ": free from the ground"
        : device + ": " + list(body.bodies()) + " cut free";
  }

  private static String list(List<String> names) {
    int last = names.size() - 1;
    return last == 0
        ? names.get(0)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }

  private String opening() {
    return "What acts on "
        + (body.whole() ? "the whole device" : list(body.bodies()))
        + ", case "
        + balance.loadCase().name()
        + ": "
        + balance.outcome().words()
        + ".";
  }

  private Set<Origin> origins() {
    Set<Origin> origins = EnumSet.noneOf(Origin.class);
    shown.forEach(force -> origins.add(force.origin()));
    body.spreads().forEach(spread -> origins.add(spread.origin()));
    body.couples().stream()
        .filter(couple -> !body.isZeroCouple(couple.moment()))
        .forEach(couple -> origins.add(couple.origin()));
    return origins;
  }

  private Optional<Freedom> motion() {
    return balance.outcome() instanceof Outcome.NoBalance no
        ? Optional.of(no.driven())
        : Optional.empty();
  }

  private void motion(Freedom freedom, View view) {
    new MotionShapes(scene, view, places).draw(freedom, body.bodies());
    words.add("It starts to move: " + freedom.words(body.device(), options.units()) + ".");
  }

  private void forces(View view, KeyRows rows) {
    Symbols symbols = new Symbols(body, shown);
    StripShapes strips = new StripShapes(scene, view, amount);
    body.spreads().forEach(spread -> strips.draw(spread, spread.part()));
    double greatest = shown.stream().mapToDouble(ActingForce::size).max().orElse(1);
    double least = shown.stream().mapToDouble(ActingForce::size).min().orElse(1);
    ArrowRule rule = ArrowRule.of(options.arrows(), least, greatest);
    if (!shown.isEmpty()) {
      rows.scale(rule, greatest);
    }
    ForceShapes shapes = new ForceShapes(scene, view, rule, amount);
    for (ActingForce force : shown) {
      arrows.put(force, shapes.force(force, symbols.of(force), pulls(force), isAlongLink(force)));
    }
    body.openForces().forEach(force -> shapes.open(force, symbols.of(force)));
    for (ActingCouple couple : body.couples()) {
      if (!body.isZeroCouple(couple.moment())) {
        shapes.couple(couple, couple.part());
      }
    }
    body.openCouples().forEach(couple -> shapes.open(couple, couple.part()));
  }

  /** Weights hang from their place; other arrows lie outside of their body if they can. */
  private boolean pulls(ActingForce force) {
    if (isAlongLink(force)) {
      return new Links(places).pulls(force);
    }
    Point middle = new Centres(places).of(centreOf(force.on()));
    return force.origin() == Origin.WEIGHT || force.vector().dot(middle.to(force.at())) > 0;
  }

  private boolean isAlongLink(ActingForce force) {
    return new Links(places).has(force.part());
  }

  /** A load on a pin belongs to no body; the first of the group stands for it. */
  private String centreOf(String on) {
    return body.bodies().contains(on) ? on : body.bodies().get(0);
  }

  private void lines(View view) {
    ActionLines lines = new ActionLines(scene, view, amount);
    for (MomentArm arm : options.arms()) {
      for (ActingForce force : OptionCheck.forces(body, arm.force())) {
        double length = lines.arm(force, places.of(arm.about()));
        words.add(
            "Moment arm of "
                + force.symbol()
                + " about "
                + arm.about()
                + ": "
                + amount.length(length)
                + ".");
      }
    }
    if (isThreeForceBody() && options.arms().isEmpty()) {
      lines
          .meeting(shown)
          .ifPresent(point -> words.add("Three forces act, and their lines meet in one point."));
    }
  }

  private boolean isThreeForceBody() {
    return shown.size() == 3
        && !options.components()
        && body.reactions()
        && body.spreads().isEmpty()
        && body.openForces().isEmpty()
        && body.openCouples().isEmpty()
        && body.couples().stream().allMatch(couple -> body.isZeroCouple(couple.moment()))
        && shown.stream().map(ActingForce::at).distinct().count() > 1;
  }

  private void measurements(View view) {
    DimensionShapes shapes = new DimensionShapes(scene, view, amount);
    if (options.automatic()) {
      slopes(shapes);
      List<Point> marked = new ArrayList<>();
      shown.forEach(force -> marked.add(force.at()));
      body.openForces().forEach(force -> marked.add(force.at()));
      body.spreads().forEach(spread -> marked.addAll(List.of(spread.from(), spread.to())));
      Extent extent = new Extent(places);
      body.bodies().forEach(extent::body);
      marked.addAll(DimensionShapes.outermost(extent.shown()));
      shapes.chains(marked);
    }
    for (Measurement one : options.measurements()) {
      shapes.draw(one, places);
    }
  }

  private void slopes(DimensionShapes shapes) {
    int drawn = 0;
    for (Map.Entry<ActingForce, Arrow> entry : arrows.entrySet()) {
      ActingForce force = entry.getKey();
      Vector vector = force.vector();
      double share = Math.min(Math.abs(vector.x()), Math.abs(vector.y())) / force.size();
      if (share > 0.02 && entry.getValue().length() > 20 && drawn < MOST_SLOPES) {
        shapes.slope(force.at(), entry.getValue());
        drawn++;
      }
    }
  }
}
