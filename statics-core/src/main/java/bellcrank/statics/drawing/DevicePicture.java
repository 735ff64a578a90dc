package bellcrank.statics.drawing;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Puts the picture of a device together. */
final class DevicePicture {

  private final Device device;
  private final DrawingOptions options;
  private final List<Pose> poses;
  private final List<DeviceDrawing.Followed> followed;
  private final Amount amount;
  private final Places places;
  private final Scene scene = new Scene();
  private final FreeBody loads;

  DevicePicture(
      Device device,
      DrawingOptions options,
      List<Pose> poses,
      List<DeviceDrawing.Followed> followed) {
    this.device = device;
    this.options = options;
    this.poses = poses;
    this.followed = followed;
    amount = new Amount(options.units());
    places = new Places(device, Pose.DRAWN);
    loads = loads();
  }

  /** All loads but springs, which are drawn as what they are. */
  private FreeBody loads() {
    List<String> bodies = FreeBody.names(device);
    Cut cut = new Cut(device, bodies, true);
    Collected found = new Collected();
    new LoadReader(places, device.cases().get(0), cut, found).read();
    new SoughtReader(Optional.empty(), places, cut, found).read();
    double scale = found.forces.stream().mapToDouble(ActingForce::size).max().orElse(0);
    for (ActingCouple couple : found.couples) {
      scale = Math.max(scale, Math.abs(couple.moment()) / device.size());
    }
    return new FreeBody(
        device,
        Pose.DRAWN,
        bodies,
        true,
        found.forces,
        found.spreads,
        found.couples,
        found.openForces,
        found.openCouples,
        false,
        scale);
  }

  String svg() {
    View view = view();
    poses.forEach(pose -> ghost(pose, view));
    followed.forEach(point -> path(point, view));
    BodiesPicture bodies = new BodiesPicture(scene, view, places, FreeBody.names(device));
    bodies.bodies(loads.loadPlaces());
    connections(view);
    springs(view);
    Key key = new Key();
    forces(view, new KeyRows(key, amount));
    for (Connection connection : device.connections()) {
      name(connection, view);
    }
    bodies.names();
    measurements(view);
    List<String> words = new ArrayList<>();
    words.add("The device " + device.name() + " with its connections and loads.");
    for (Connection connection : device.connections()) {
      words.add(
          connection.name()
              + ", a "
              + connection.kind()
              + ", joins "
              + String.join(", ", connection.bodies())
              + ".");
    }
    words.addAll(new ForceWords(loads, amount).sentences(loads.forces()));
    return new Sheet(scene, device.name(), words, key).svg();
  }

  private View view() {
    Extent extent = new Extent(places);
    FreeBody.names(device).forEach(extent::body);
    device.connections().forEach(extent::connection);
    for (Load load : device.loads()) {
      if (load instanceof Spring spring) {
        extent.place(places.of(spring.first())).place(places.of(spring.second()));
      }
    }
    loads.forces().forEach(force -> extent.place(force.at()));
    for (Pose pose : poses) {
      Extent other = new Extent(new Places(device, pose));
      FreeBody.names(device).forEach(other::body);
      other.shown().forEach(extent::place);
    }
    for (DeviceDrawing.Followed point : followed) {
      for (Pose pose : over(point)) {
        extent.place(new Places(device, pose).of(point.body(), point.point()));
      }
    }
    return View.of(extent.shown());
  }

  /** Ropes and struts first: supports are put where less is drawn. */
  private void connections(View view) {
    SupportShapes shapes = new SupportShapes(scene, view, places);
    Links links = new Links(places);
    for (boolean link : new boolean[] {true, false}) {
      for (Connection connection : device.connections()) {
        if (links.has(connection.name()) == link) {
          shapes.draw(connection, true);
        }
      }
    }
  }

  private void ghost(Pose pose, View view) {
    MemberShapes shapes = new MemberShapes(scene, view, new Places(device, pose));
    device.members().forEach(shapes::ghost);
  }

  private List<Pose> over(DeviceDrawing.Followed point) {
    return point.poses().isEmpty() ? poses : point.poses();
  }

  private void path(DeviceDrawing.Followed point, View view) {
    List<Point> way = new ArrayList<>();
    for (Pose pose : over(point)) {
      way.add(view.at(new Places(device, pose).of(point.body(), point.point())));
    }
    if (way.size() > 1) {
      Pen pen = Pen.from(way.get(0));
      way.subList(1, way.size()).forEach(pen::to);
      scene.draw(Layer.GHOST, "path-of", pen);
    }
  }

  private void springs(View view) {
    LinkShapes links = new LinkShapes(scene, view, places);
    for (Load load : device.loads()) {
      if (load instanceof Spring spring) {
        links.spring(spring);
        anchor(spring.first(), spring.second(), view);
        anchor(spring.second(), spring.first(), view);
        Point start = view.at(places.of(spring.first()));
        Point end = view.at(places.of(spring.second()));
        scene.label(ForceLabels.along(TextWidth.lines(spring.name()), "part-name", start, end));
      } else if (load instanceof TorsionSpring spring) {
        Point at = view.at(new Centres(places).between(spring.body(), spring.other()));
        links.coil(at);
        scene.label(ForceLabels.round(TextWidth.lines(spring.name()), "part-name", at, 18));
      }
    }
  }

  private void anchor(End end, End other, View view) {
    Vector out = places.of(other).to(places.of(end));
    if (end.body().equals(Ground.NAME) && out.norm() > 0) {
      new GroundShapes(scene).anchor(view.at(places.of(end)), View.unit(out));
    }
  }

  private void forces(View view, KeyRows rows) {
    List<ActingForce> shown =
        loads.forces().stream().filter(force -> !loads.isZero(force.size())).toList();
    Set<Origin> origins = EnumSet.noneOf(Origin.class);
    shown.forEach(force -> origins.add(force.origin()));
    loads.spreads().forEach(spread -> origins.add(spread.origin()));
    loads.couples().forEach(couple -> origins.add(couple.origin()));
    loads.openForces().forEach(force -> origins.add(force.origin()));
    loads.openCouples().forEach(couple -> origins.add(couple.origin()));
    rows.origins(origins, false, false);
    StripShapes strips = new StripShapes(scene, view, amount);
    loads.spreads().forEach(spread -> strips.draw(spread, spread.part()));
    double greatest = shown.stream().mapToDouble(ActingForce::size).max().orElse(1);
    double least = shown.stream().mapToDouble(ActingForce::size).min().orElse(1);
    ArrowRule rule = ArrowRule.of(options.arrows(), least, greatest);
    if (!shown.isEmpty()) {
      rows.scale(rule, greatest);
    }
    ForceShapes shapes = new ForceShapes(scene, view, rule, amount);
    for (ActingForce force : shown) {
      shapes.force(force, force.symbol(), force.origin() == Origin.WEIGHT, false);
    }
    loads.openForces().forEach(force -> shapes.open(force, force.symbol()));
    for (ActingCouple couple : loads.couples()) {
      if (!loads.isZeroCouple(couple.moment())) {
        shapes.couple(couple, couple.part());
      }
    }
    loads.openCouples().forEach(couple -> shapes.open(couple, couple.part()));
  }

  private void name(Connection connection, View view) {
    List<Point> stretch = new LinkShapes(scene, view, places).stretch(connection);
    List<String> lines = TextWidth.lines(connection.name());
    scene.label(
        stretch.get(0).distance(stretch.get(1)) < 1
            ? ForceLabels.round(lines, "part-name", stretch.get(0), 9)
            : ForceLabels.along(lines, "part-name", stretch.get(0), stretch.get(1)));
  }

  private void measurements(View view) {
    DimensionShapes shapes = new DimensionShapes(scene, view, amount);
    if (options.automatic()) {
      List<Point> marked = new ArrayList<>();
      FreeBody.names(device).forEach(name -> marked.addAll(new Extent(places).body(name).shown()));
      shapes.chains(marked);
    }
    for (Measurement one : options.measurements()) {
      shapes.draw(one, places);
    }
  }
}
