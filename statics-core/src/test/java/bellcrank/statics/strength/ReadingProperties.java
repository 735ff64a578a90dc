package bellcrank.statics.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.RandomDevices;
import bellcrank.statics.equilibrium.RandomFrame;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.statistics.Statistics;

/** What is read from prepared solves, pose after pose, is what balances of these poses tell. */
class ReadingProperties {

  private static final double CLOSE = 1e-9;

  /** Beyond this condition both ways lose digits, each its own. */
  private static final double BADLY_CONDITIONED = 1e5;

  /** Frames whose loads lie on their bars, and devices of all kinds of connections. */
  @Provide
  Arbitrary<Device> held() {
    return Arbitraries.oneOf(Arbitraries.longs().map(RandomFrame::of), RandomDevices.few());
  }

  @Property(tries = 250, edgeCases = EdgeCasesMode.NONE)
  void bothWaysCarryTheSame(
      @ForAll("held") Device device, @ForAll @DoubleRange(min = -0.4, max = 0.4) double turn) {
    Needs needs = all(device);
    Reading reading = new Reading(device, needs);
    Statistics.label("can be read").collect(reading.isComplete());
    Assume.that(reading.isComplete());
    CarriedForces read = reading.room(needs);
    for (Pose pose : new Pose[] {turned(device, turn), Pose.DRAWN}) {
      LoadCase loads = device.cases().get(0);
      Balance balance = Balance.of(device, loads, pose);
      if (balance.condition() < BADLY_CONDITIONED && balance.redundancy() == 0) {
        boolean solved = reading.read(pose, loads, read);
        Statistics.label("solved").collect(solved);
        if (solved) {
          same(device, needs, read, CarriedForces.of(balance, needs));
          another(device, needs, reading, pose);
        }
      }
    }
  }

  /** Another case in the same pose is read with the factors of the last one. */
  private static void another(Device device, Needs needs, Reading reading, Pose pose) {
    LoadCase stated = device.cases().get(0);
    CarriedForces read = reading.room(needs);
    for (double times : new double[] {0, 0.5}) {
      Map<String, Double> factors = new HashMap<>();
      device.loads().stream().limit(2).forEach(load -> factors.put(load.name(), times));
      LoadCase other = new LoadCase("other", factors, stated.dynamic());
      if (reading.readAgain(pose, other, read)) {
        same(device, needs, read, CarriedForces.of(Balance.of(device, other, pose), needs));
      }
    }
  }

  /** A block of 1900 N in the bight of a rope with a loss of a tenth: T + 0.9·T = 1900. */
  @Example
  void bothEndsOfALossyRopeAreRead() {
    Device device =
        Device.named("hoist")
            .point("left", -1, 3)
            .point("block", 0, 0)
            .point("right", 1, 3)
            .member("block", "block")
            .connect(new Guide("rail", "block", "block", "ground", Direction.UP))
            .connect(
                new Reeving(
                    "rope",
                    List.of(
                        Stop.end("ground", "left"),
                        Stop.sheave("block", "block", 1, Turn.COUNTER_CLOCKWISE),
                        Stop.end("ground", "right")),
                    0.9,
                    Reeving.Hauling.RAISING))
            .force("load", "block", "block", Vector.of(0, -1900))
            .build();
    Needs needs = all(device);
    Reading reading = new Reading(device, needs);
    CarriedForces read = reading.room(needs);
    assertThat(reading.read(Pose.DRAWN, device.cases().get(0), read)).isTrue();
    int rope = needs.tension("rope");
    assertThat(read.tension(rope)).isCloseTo(1000, within(1e-9));
    assertThat(read.endTension(rope)).isCloseTo(900, within(1e-9));
    same(device, needs, read, CarriedForces.of(Balance.of(device), needs));
  }

  /** Each body turned about its own place, so that no two turn alike. */
  private static Pose turned(Device device, double turn) {
    Map<String, Frame> frames = new HashMap<>();
    int k = 1;
    for (Member member : device.members()) {
      frames.put(member.name(), Frame.turnAbout(Point.of(k, -k), turn / k));
      k++;
    }
    return Pose.of(frames);
  }

  /** Everything that could be read. */
  private static Needs all(Device device) {
    Needs needs = new Needs();
    for (Member member : device.members()) {
      member.bars().forEach(bar -> needs.bar(member.name(), bar));
    }
    for (Connection connection : device.connections()) {
      connection.bodies().forEach(body -> needs.force(connection.name(), body));
      if (Stretches.hasTension(connection)) {
        needs.tension(connection.name());
      }
    }
    return needs;
  }

  private static void same(Device device, Needs needs, CarriedForces read, CarriedForces told) {
    double scale = 1;
    for (int k = 0; k < needs.forces().size(); k++) {
      scale = told.forceOpen(k).isEmpty() ? Math.max(scale, told.size(k)) : scale;
    }
    double force = CLOSE * scale;
    double moment = force * device.size();
    for (int k = 0; k < needs.bars().size(); k++) {
      Optional<String> open = told.barOpen(k);
      assertThat(open).as("bar %s", needs.bars().get(k)).isEmpty();
      same(needs.bars().get(k).toString(), read.bar(k), told.bar(k), force, moment);
    }
    for (int k = 0; k < needs.forces().size(); k++) {
      String name = needs.forces().get(k).toString();
      assertThat(read.x(k)).as("x of %s", name).isCloseTo(told.x(k), within(force));
      assertThat(read.y(k)).as("y of %s", name).isCloseTo(told.y(k), within(force));
      assertThat(read.couple(k)).as("couple of %s", name).isCloseTo(told.couple(k), within(moment));
      assertThat(read.frame(k)).as("frame of %s", name).isEqualTo(told.frame(k));
    }
    for (int k = 0; k < needs.tensions().size(); k++) {
      String name = needs.tensions().get(k);
      assertThat(read.tension(k)).as(name).isCloseTo(told.tension(k), within(force));
      assertThat(read.endTension(k))
          .as("end of %s", name)
          .isCloseTo(told.endTension(k), within(force));
    }
  }

  private static void same(String name, BarLine read, BarLine told, double force, double moment) {
    assertThat(read.pieces()).as("pieces of %s", name).isEqualTo(told.pieces());
    for (int piece = 0; piece < told.pieces(); piece++) {
      double start = told.start(piece);
      double end = told.end(piece);
      assertThat(read.start(piece)).as("start in %s", name).isCloseTo(start, within(1e-12));
      assertThat(read.end(piece)).as("end in %s", name).isCloseTo(end, within(1e-12));
      for (double at : new double[] {start, (2 * start + end) / 3, end}) {
        assertThat(read.normal(piece, at))
            .as("N in %s", name)
            .isCloseTo(told.normal(piece, at), within(force));
        assertThat(read.shear(piece, at))
            .as("V in %s", name)
            .isCloseTo(told.shear(piece, at), within(force));
        assertThat(read.moment(piece, at))
            .as("M in %s", name)
            .isCloseTo(told.moment(piece, at), within(moment));
      }
    }
  }
}
