package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Problem;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.study.Model;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** Reads the sections of one file in the order in which they build on one another. */
final class FileReading {

  private static final String FORMAT = "1";
  private static final String NAMES = "names with what they stand for";

  private final Spot root;

  FileReading(Spot root) {
    this.root = root;
  }

  /** What the file holds; empty if the device cannot be built, which is then reported. */
  Optional<DeviceFile> read() {
    Optional<Fields> top = root.fields("a mapping that begins with format: 1");
    if (top.isEmpty()) {
      return Optional.empty();
    }
    Fields fields = top.get();
    fields.only(FileKeys.TOP);
    format(fields);
    Optional<About> about = about(fields);
    UnitSystem units = UnitsReader.read(fields.find("units"));
    Reading reading = begun(fields, units);
    parts(fields, reading);
    GroundReader groundReader = new GroundReader(reading);
    each(fields, "ground", groundReader::read);
    LimitsReader limitsReader = new LimitsReader(reading);
    each(fields, "limits", limitsReader::read);
    TravelReader travelReader = new TravelReader(reading);
    travelReader.read(fields);
    FindReader findReader = new FindReader(reading);
    each(fields, "find", findReader::read);
    HangReader hangReader = new HangReader(reading);
    each(fields, "hang", hangReader::hang);
    each(fields, "balance point", hangReader::handle);
    SideViewReader sideReader = new SideViewReader(reading);
    Optional<SideStatement> side = fields.find("side view").flatMap(sideReader::read);
    SizingReader sizingReader = new SizingReader(reading);
    Optional<SizingStatement> sizing = fields.find("sizing").flatMap(sizingReader::read);
    DrivingReader drivingReader = new DrivingReader(reading);
    drivingReader.read(fields);
    Optional<Device> device = built(fields, reading);
    device.ifPresent(sizingReader::check);
    side.ifPresent(one -> device.ifPresent(known -> sideReader.check(one, known)));
    Map<String, Variation> limits = device.map(limitsReader::checked).orElse(Map.of());
    AsksReader asksReader = new AsksReader(reading, device, cases(fields));
    List<Ask> asks = fields.find("ask").map(asksReader::asks).orElse(List.of());
    if (sizing.isPresent()) {
      asksReader.strength(travelReader.dimension());
    }
    List<Expectation> expectations =
        fields.find("expect").map(asksReader::expectations).orElse(List.of());
    Optional<TravelPlan> travel = travelReader.checked(device, asksReader);
    device.ifPresent(hangReader::check);
    WinchReader winchReader = new WinchReader(reading, asksReader);
    each(fields, "winches", winchReader::read);
    MeasuredLineReader lineReader = new MeasuredLineReader(reading, asksReader);
    each(fields, "measured lines", lineReader::read);
    List<FindPlan> finds = findReader.plans(device, asksReader, travel);
    Optional<Driving> driving = drivingReader.checked(device, asksReader);
    Optional<FileParts> whole =
        device
            .filter(built -> root.problems().none())
            .map(
                built ->
                    new FileParts(
                        new Model(
                            built, groundReader.foundations(), sizing.map(SizingStatement::sizing)),
                        driving.map(Driving::variation),
                        travel));
    StudyNumbers.StatedDrives drives = new StudyNumbers.StatedDrives(driving, travel);
    Studies studies =
        new StudiesReader(new StudyNumbers(reading, asksReader, whole, drives)).read(fields);
    return device.isPresent() && about.isPresent() && root.problems().none()
        ? Optional.of(
            new DeviceFile(
                device.get(),
                about.get(),
                units,
                asks,
                expectations,
                limits,
                groundReader.foundations(),
                side,
                reading.tables(),
                travel,
                new Inquiries(
                    finds,
                    winchReader.winches(),
                    lineReader.lines(),
                    hangReader.hangs(),
                    hangReader.handles(),
                    travelReader.looksForRest(),
                    studies),
                sizing,
                driving))
        : Optional.empty();
  }

  private static void format(Fields fields) {
    Optional<Spot> format = fields.need("format", "format: 1");
    Optional<String> text = format.flatMap(spot -> spot.text("1, the only format there is"));
    if (text.isEmpty()) {
      return;
    }
    if (!text.get().equals(FORMAT)) {
      format.ifPresent(spot -> spot.report("1, the only format there is"));
    }
    List<Named> named = fields.named();
    if (!named.get(0).text().equals("format")) {
      named.stream()
          .filter(one -> one.text().equals("format"))
          .forEach(one -> one.name().report("format behind other keys", "format as first key"));
    }
  }

  private static Optional<About> about(Fields fields) {
    try {
      return Optional.of(
          new About(
              text(fields, "statement"),
              text(fields, "source"),
              text(fields, "licence"),
              text(fields, "basis"),
              text(fields, "note")));
    } catch (ModelException e) {
      for (Problem problem : e.problems()) {
        fields.find(problem.field()).ifPresent(spot -> spot.report(problem.wanted()));
      }
      return Optional.empty();
    }
  }

  private static Optional<String> text(Fields fields, String key) {
    return fields.find(key).flatMap(spot -> spot.text("a text"));
  }

  /** Device name, gravity and points: what all other sections may need. */
  private Reading begun(Fields fields, UnitSystem units) {
    DeviceBuilder device =
        fields
            .need("device", "the name of the device")
            .flatMap(FileReading::named)
            .orElseGet(() -> Device.named("unnamed"));
    PointNames points = new PointNames();
    PartIndex index = new PartIndex();
    if (!fields.isWhole("points")) {
      points.incomplete();
    }
    List<Named> stated = named(fields, "points");
    PointsReader.read(stated, new Values(units, 0), points, device, index);
    Vector gravity = GravityReader.read(fields.find("gravity"), units, points);
    device.gravity(gravity);
    Values values = new Values(units, StrictMath.hypot(gravity.x(), gravity.y()));
    return new Reading(
        device,
        root.problems(),
        values,
        points,
        new BodyNames(),
        new PartNames(),
        index,
        new ArrayList<>());
  }

  private static Optional<DeviceBuilder> named(Spot spot) {
    try {
      return spot.text("the name of the device").map(Device::named);
    } catch (ModelException e) {
      e.problems().forEach(problem -> spot.report(problem.wanted()));
      return Optional.empty();
    }
  }

  private static void parts(Fields fields, Reading reading) {
    if (!fields.isWhole("members") || bent(fields, "joints") || bent(fields, "truss")) {
      reading.bodies().incomplete();
    }
    for (String section : List.of("connections", "loads", "seek")) {
      if (!fields.isWhole(section)) {
        reading.parts().incomplete();
      }
    }
    MembersReader members = new MembersReader(reading);
    List<Named> stated = members.declare(named(fields, "members"));
    JointsReader joints = new JointsReader(reading);
    fields.find("joints").ifPresent(joints::joints);
    fields.find("truss").ifPresent(joints::truss);
    stated.forEach(members::read);
    each(fields, "connections", new ConnectionsReader(reading)::read);
    each(fields, "loads", new LoadsReader(reading)::read);
    each(fields, "seek", new SeekReader(reading)::read);
    CasesReader cases = new CasesReader(reading);
    each(fields, "cases", cases::read);
    fields.find("advantage").ifPresent(cases::advantage);
  }

  /** Names of the cases as far as they are known; empty if they are not. */
  private static List<String> cases(Fields fields) {
    if (!fields.has("cases") && fields.isWhole("cases")) {
      return List.of(LoadCase.ALL_LOADS.name());
    }
    return fields
        .find("cases")
        .filter(Spot::isFields)
        .map(spot -> named(fields, "cases").stream().map(Named::text).toList())
        .orElse(List.of());
  }

  /** Whether a section that may be a list or a mapping is neither, or stands under another name. */
  private static boolean bent(Fields fields, String key) {
    boolean list = fields.find(key).filter(Spot::isItems).isPresent();
    return !list && !fields.isWhole(key);
  }

  private static void each(Fields fields, String section, Consumer<Named> reader) {
    named(fields, section).forEach(reader);
  }

  private static List<Named> named(Fields fields, String section) {
    return fields
        .find(section)
        .flatMap(spot -> spot.fields(NAMES))
        .map(Fields::named)
        .orElse(List.of());
  }

  /** The device; problems that only all parts together show are reported where the part stands. */
  private Optional<Device> built(Fields fields, Reading reading) {
    boolean whole = root.problems().none();
    for (Problem problem : reading.device().problems()) {
      // parts that could not be read are missing here, which must not be held against the rest
      if (whole || !problem.value().equals("none")) {
        reading.index().report(problem, fields.whole());
      }
    }
    return root.problems().none() ? Optional.of(reading.device().build()) : Optional.empty();
  }
}
