package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Joint;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Sought;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.List;

/**
 * Writes device files. Reading what was written gives an equal file, numbers to the last bit. Three
 * things have no place in a file: sought quantities come behind the other loads, a plain end of a
 * rope has no turn, and places are written as coordinates, not as they were measured.
 */
public final class DeviceFileWriter {

  private final DeviceFile file;
  private final Device device;
  private final AmountText amounts;
  private final BodyNames bodies = new BodyNames();
  private final YamlLayout out = new YamlLayout();

  private DeviceFileWriter(DeviceFile file) {
    this.file = file;
    this.device = file.device();
    Vector gravity = device.gravity();
    this.amounts = new AmountText(file.units(), StrictMath.hypot(gravity.x(), gravity.y()));
    for (Member member : device.members()) {
      bodies.placeMember(member.name());
    }
    for (Joint joint : device.joints()) {
      bodies.placeJoint(joint.name(), joint.at());
    }
  }

  /**
   * Writes a file.
   *
   * @param file what it should hold
   * @return the text of the file, lines ended by a line feed
   */
  public static String write(DeviceFile file) {
    return new DeviceFileWriter(file).written();
  }

  private String written() {
    out.field("format", "1");
    out.text("device", device.name());
    About about = file.about();
    about.statement().ifPresent(text -> out.text("statement", text));
    about.source().ifPresent(text -> out.text("source", text));
    about.licence().ifPresent(text -> out.text("licence", text));
    about.basis().ifPresent(text -> out.text("basis", text));
    about.note().ifPresent(text -> out.text("note", text));
    out.field("units", units());
    gravity();
    points();
    bodiesAndConnections();
    loads();
    ground();
    limits();
    travel();
    new InquiriesText(amounts, file.travel()).write(file.inquiries(), out);
    file.side().ifPresent(side -> out.field("side view", new SideText(amounts).written(side)));
    sizing();
    new StudiesText(amounts, file.model()).write(file.inquiries().studies(), out);
    answers();
    return out.written();
  }

  private String units() {
    UnitSystem units = file.units();
    if (units.equals(UnitSystem.US)) {
      return "us";
    }
    UnitSystem derived = UnitSystem.from(units.unit(Dimension.LENGTH), units.unit(Dimension.FORCE));
    Flow flow =
        new Flow()
            .text("length", units.unit(Dimension.LENGTH).symbol())
            .text("force", units.unit(Dimension.FORCE).symbol());
    for (Dimension dimension : Dimension.values()) {
      if (!units.unit(dimension).equals(derived.unit(dimension))) {
        flow.text(UnitsReader.key(dimension), units.unit(dimension).symbol());
      }
    }
    return flow.written();
  }

  private void gravity() {
    Vector gravity = device.gravity();
    if (gravity.equals(Device.STANDARD_GRAVITY)) {
      return;
    }
    if (gravity.x() == 0 && gravity.y() <= 0) {
      out.field("gravity", amounts.withUnit(-gravity.y(), Dimension.ACCELERATION));
      return;
    }
    out.field(
        "gravity",
        new Flow()
            .put("size", amounts.withUnit(amounts.gravity(), Dimension.ACCELERATION))
            .put("direction", DirectionText.components(gravity.x(), gravity.y()))
            .written());
  }

  private void points() {
    if (!device.points().isEmpty()) {
      out.section("points");
    }
    device
        .points()
        .forEach(
            (name, point) ->
                out.entry(
                    name,
                    Flow.items(
                        List.of(
                            amounts.bare(point.x(), Dimension.LENGTH),
                            amounts.bare(point.y(), Dimension.LENGTH)))));
  }

  private void bodiesAndConnections() {
    MemberText members = new MemberText(device, amounts);
    if (!device.members().isEmpty()) {
      out.section("members");
    }
    device.members().forEach(member -> out.entry(member.name(), members.written(member)));
    TrussForm truss = TrussForm.of(device, bodies);
    joints(truss.joints());
    if (!truss.bars().isEmpty()) {
      out.field(
          "truss", Flow.items(truss.bars().stream().map(bar -> Flow.list(bar.places())).toList()));
    }
    List<Connection> others =
        device.connections().subList(truss.bars().size(), device.connections().size());
    ConnectionText connections = new ConnectionText(amounts, bodies, file.tables());
    if (!others.isEmpty()) {
      out.section("connections");
    }
    for (Connection connection : others) {
      int count = device.counts().getOrDefault(connection.name(), 1);
      out.entry(connection.name(), connections.written(connection, count));
    }
  }

  private void joints(List<Joint> joints) {
    if (joints.isEmpty()) {
      return;
    }
    if (joints.stream().allMatch(joint -> joint.name().equals(joint.at()))) {
      out.field("joints", Flow.list(joints.stream().map(Joint::name).toList()));
      return;
    }
    out.section("joints");
    joints.forEach(joint -> out.entry(joint.name(), YamlScalar.of(joint.at())));
  }

  private void loads() {
    LoadText texts = new LoadText(amounts, bodies);
    int weights = new MemberText(device, amounts).leadingWeights();
    List<Load> loads = device.loads().subList(weights, device.loads().size());
    section("loads", loads.stream().filter(load -> !(load instanceof Sought)).toList(), texts);
    section("seek", loads.stream().filter(load -> load instanceof Sought).toList(), texts);
    if (!device.cases().equals(List.of(LoadCase.ALL_LOADS))) {
      out.section("cases");
      device.cases().forEach(one -> out.entry(one.name(), texts.written(one)));
    }
    device
        .advantage()
        .ifPresent(
            pair ->
                out.field(
                    "advantage",
                    new Flow()
                        .text("effort", pair.effort())
                        .text("resistance", pair.resistance())
                        .written()));
  }

  private void section(String key, List<Load> loads, LoadText texts) {
    if (!loads.isEmpty()) {
      out.section(key);
    }
    loads.forEach(load -> out.entry(load.name(), texts.written(load)));
  }

  private void ground() {
    GroundText texts = new GroundText(amounts);
    if (!file.foundations().isEmpty()) {
      out.section("ground");
    }
    file.foundations().forEach(one -> out.entry(one.base(), texts.written(one)));
  }

  private void limits() {
    if (!file.limits().isEmpty()) {
      out.section("limits");
    }
    file.limits().forEach((name, variation) -> out.entry(name, LimitText.written(variation)));
  }

  private void travel() {
    TravelText texts = new TravelText(amounts);
    file.travel()
        .ifPresent(
            plan -> {
              out.field("drive", texts.drive(plan.drive()));
              out.field("travel", texts.travel(plan, file.inquiries().rests()));
              if (!plan.curves().isEmpty()) {
                out.field("curves", Flow.list(plan.curves().stream().map(Ask::text).toList()));
              }
            });
  }

  private void sizing() {
    SizingText texts = new SizingText(amounts);
    file.sizing().ifPresent(sizing -> out.field("sizing", texts.written(sizing)));
    file.driving().ifPresent(driving -> out.field("driving", SizingText.driving(driving)));
  }

  private void answers() {
    if (!file.asks().isEmpty()) {
      out.field("ask", Flow.list(file.asks().stream().map(Ask::text).toList()));
    }
    if (!file.expectations().isEmpty()) {
      out.section("expect");
    }
    for (Expectation expectation : file.expectations()) {
      Flow flow = new Flow();
      if (expectation.value() instanceof Expected.Amount amount) {
        flow.put("value", amounts.withUnit(amount.quantity().si(), amount.unit()))
            .put("digits", Integer.toString(expectation.digits()));
      } else if (expectation.value() instanceof Expected.Words words) {
        flow.text("value", words.text());
      }
      out.entry(
          StrengthAsk.text(expectation.ask()),
          flow.text("source", expectation.source())
              .text("printed", expectation.printed())
              .text("reason", expectation.reason())
              .written());
    }
  }
}
