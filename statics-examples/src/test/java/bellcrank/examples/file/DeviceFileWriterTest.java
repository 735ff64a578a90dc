package bellcrank.examples.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class DeviceFileWriterTest {

  /** Every kind of part, written as the writer writes it. */
  private static final String ALL_KINDS =
      """
      format: 1
      device: all kinds
      statement: "One of each: what does it come to?"
      note: >-
        A longer text that does not fit on one line of the file, so that it has to be folded to the width of the
        page; it has "quotes", a # sign and a colon: none of them does any harm here.
      units: {length: ft, force: kip, angle: rad}
      gravity: 32.2 ft/s²
      points:
        A: [0, 0]
        B: [4, 0]
        C: [4, 3]
        D: [-1.5, 0.25]
        "n": [1, 1]
        far: [20, 20]
      members:
        beam: [A, B, C]
        frame: {bars: [[A, B], [A, C]], weight: 12 lb, outline: [A, B, C], count: 2}
        plate: {points: [D, A, B], bars: [A, B], weight: {value: 1.5, at: D}}
        bare: {points: [C]}
      joints:
        ring: C
      truss: [[A, B], [B, C]]
      connections:
        pin: {pin: A, joins: [beam, frame, ground], radius: 0.1, friction: 0.2, count: 2}
        clamp: {clamp: B, joins: [plate, ground]}
        roller: {roller: C, joins: [beam, ground], push: up, sides: one}
        slot: {slot: C, joins: [beam, plate], along: [3, 4]}
        guide: {guide: C, joins: [bare, ground], along: 1.25 rad}
        strut: {strut: [A, C], weight: 3 lb}
        line: {line: [A, far], joins: [beam, ground]}
        rope: {reeving: [{end: A, joins: beam}, {sheave: far, joins: ground, radius: 0.5, turns: clockwise},
            {drum: C, joins: plate, radius: 0.25, turns: counter-clockwise}], efficiency: 0.95, hauling: raising}
        band: {wrap: [{end: A, joins: beam}, {post: far, joins: ground, radius: 1, turns: clockwise}, {end: B,
            joins: plate}], friction: 0.3, extra turns: 2}
        screw: {screw: [A, D], joins: [beam, plate], lead: 0.02, mean radius: 0.05, friction: 0.1}
        contact: {contact: D, joins: [plate, ground], push: left, friction: 0.4, kinetic friction: 0.3}
        base: {contact base: D, joins: [plate, ground], push: up, width: 0.5, friction: 0.4}
        base 2: {contact base: B, joins: [plate, ground], push: up, width: 0.5,
            friction: {table: "timber on timber, dry (handbook)", take: lowest}}
        base 3: {contact base: A, joins: [plate, ground], push: up, width: 0.5, friction: 0.4}
        base 4: {contact base: A, joins: [beam, ground], push: up, width: 0.5, friction: 0.4}
        base 5: {contact base: C, joins: [beam, ground], push: up, width: 0.5, friction: 0.4}
      loads:
        straight: {force: 1.25, direction: left, member: beam, at: B}
        slanted: {force: 2, direction: 0.5 rad, member: beam, at: B}
        sloping: {force: 2, direction: [5, -12], joint: ring}
        parts: {force: [1, 0.2], joint: A}
        turning: {couple: 3.5, member: beam}
        cranking: {couple: 0.25, screw: screw}
        even: {spread: 2, member: beam, from: A, to: B}
        wind: {spread: [0, 2], member: beam, from: A, to: B, direction: to its left, per: horizontal}
        mass: {weight: 7 kg, member: beam, at: A}
        spring: {spring: 2, from: A, to: C, joins: [beam, plate], free length: 4}
        hinge spring: {torsion spring: 5, joins: [beam, ground], turned: 0.2 rad}
      seek:
        push: {want: force, direction: up, member: beam, at: C}
        both: {want: components, joint: ring}
        turn: {want: couple, member: plate}
        crank: {want: couple, screw: screw}
        block: {want: mass, member: plate, at: D}
        snow: {want: intensity, direction: down, member: beam, from: A, to: B}
      cases:
        storm: {factors: {wind: 1.5, even: 0}, dynamic: 1.3}
        calm: {}
      advantage: {effort: straight, resistance: push}
      ground:
        base: {length: 1.5, pressure: 2.5, source: a report on the yard, adhesion: 0.1}
        base 2: {length: 1.5, drained: {friction angle: 0.5 rad, cohesion: 0.25, weight: 0.125, overburden: 0.5},
            cleat: {depth: 0.75, friction angle: 0.5 rad, weight: 0.125}}
        base 3: {length: 2, undrained: {strength: 1.25}}
        base 4: {length: 2, soil: "Canadian house plans: firm clay"}
        base 5: {length: 2, pressure: 3}
      limits:
        growth: {vary: straight}
        two: {vary: [wind, even]}
        loads: {vary: all}
        along: {move: mass, from: A, to: far}
      drive: {turn: beam, against: plate}
      travel: {from: -0.5 rad, to: 0.25 rad, steps: 5, meets: [{point: D, of: plate, edge: [A, far],
          against: ground}, {point: C, of: ring, edge: [A, B], against: frame}]}
      curves: [pin.x on frame, strut.length, point(D).y on plate]
      side view: {base: base 2, breadth: 2.5, friction: 0.25, base offset: 0.125, lean: 0.5 rad, slope: -0.25 rad,
          offsets: {straight: 0.5, base 3: -1}, loads: {draw: {height: 2, side: 1.5}, stone: {height: 1,
          offset: 0.5, down: 3}}, stays: {left: {height: 2, anchor offset: -1.5, anchor height: 0.25}},
          leave out: [wind, base 4]}
      ask: [pin.x on frame, advantage.ideal, greatest multiple(wind), least distance(mass) along A–far in storm]
      expect:
        push: {value: 1.6 kip, digits: 2, source: "by hand: 1.6", printed: "1.5 kip", reason: misprint}
        turn in storm: {value: -3.25 kip·ft, digits: 3}
        outcome: {value: in balance}
        verdict: {value: holds}
        friction factor: {value: 0.75, digits: 2}
        greatest push: {value: 2 kip, digits: 1}
        greatest distance(mass) along A–far: {value: 3.5 ft, digits: 2}
      """;

  static Iterable<Path> devices() {
    return SharedFiles.devices();
  }

  @Test
  void everyKindOfPartIsWrittenAsItReads() {
    assertThat(DeviceFileWriter.write(Reads.file(ALL_KINDS))).isEqualTo(ALL_KINDS);
  }

  @ParameterizedTest
  @MethodSource("devices")
  void everyDeviceFileComesBackEqual(Path path) {
    DeviceFile file = Reads.file(SharedFiles.text(path));
    assertThat(Reads.file(DeviceFileWriter.write(file))).isEqualTo(file);
  }

  @Test
  void aTiltedGravityComesBackExactly() {
    DeviceFile file =
        Reads.file(
            """
            format: 1
            device: x
            gravity: {size: 9.81 m/s^2, direction: 250 deg}
            members: {m: {}}
            """);
    assertThat(Reads.file(DeviceFileWriter.write(file))).isEqualTo(file);
    assertThat(file.device().gravity().norm()).isCloseTo(9.81, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "short",
        "two lines\nof text",
        "- looks like an item",
        "ends with a colon:",
        "no",
        "1e3",
        "a\tb",
        "line\n\n  indented\nline ",
        "\u2028 and \uD83D\uDE00 and \u200B",
        "it's \"quoted\" and \\ slashed",
        "# no comment",
        "key: value # and more of it, much more than would fit on a line of the file, so that it folds"
            + "  with two blanks",
        "a very long text without anything special that has to be folded since it is longer than the"
            + " page is wide and goes on --- and on: # until its end"
      })
  void freeTextsComeBack(String text) {
    DeviceFile file =
        new DeviceFile(
            Device.named(text.equals("no") ? "no" : "x").member("m").build(),
            new About(
                Optional.of(text),
                Optional.of(text),
                Optional.empty(),
                Optional.empty(),
                Optional.of(text)),
            UnitSystem.SI,
            List.of(),
            List.of());
    assertThat(Reads.file(DeviceFileWriter.write(file))).isEqualTo(file);
  }

  @Test
  void aLongAskIsWrittenAsAKey() {
    StringBuilder ask = new StringBuilder("group(");
    DeviceBuilder device = Device.named("x");
    for (int i = 0; i < 40; i++) {
      String name = "member with a long name that goes on and on " + i;
      device.member(name);
      ask.append(i == 0 ? "" : ", ").append(name);
    }
    Expectation expectation =
        new Expectation(
            Ask.parse(ask + ").x"),
            new Expected.Amount(new Quantity(1, Dimension.FORCE), Unit.parse("N")),
            3,
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    DeviceFile file =
        new DeviceFile(
            device.build(), About.NOTHING, UnitSystem.SI, List.of(), List.of(expectation));
    assertThat(Reads.file(DeviceFileWriter.write(file))).isEqualTo(file);
  }

  private static DeviceFile expecting(Expected.Amount amount) {
    return new DeviceFile(
        Device.named("x").point("heel", 0, 0).member("m", "heel").build(),
        About.NOTHING,
        UnitSystem.SI,
        List.of(),
        List.of(
            new Expectation(
                Ask.parse("group(m).couple about heel"),
                amount,
                3,
                Optional.empty(),
                Optional.empty(),
                Optional.empty())));
  }

  @Test
  void anExpectedValueIsWrittenInItsOwnUnit() {
    Unit unit = Unit.parse("kip·in");
    for (String number : List.of("51.2", "-0.001", "0", "33.3333333333333", "1e+300")) {
      Quantity quantity = Quantity.parse(number + " kip·in", Dimension.MOMENT);
      assertThat(DeviceFileWriter.write(expecting(new Expected.Amount(quantity, unit))))
          .contains("{value: " + number + " kip·in, digits: 3}");
    }
    // the nearest double does not give this value back, but 17 digits do
    Quantity between = new Quantity(120, Dimension.MOMENT);
    assertThat(unit.toSi(unit.fromSi(between.si()))).isNotEqualTo(between.si());
    DeviceFile file = expecting(new Expected.Amount(between, unit));
    assertThat(Reads.file(DeviceFileWriter.write(file))).isEqualTo(file);
  }

  @Test
  void anExpectedValueFitsItsUnit() {
    Quantity small = new Quantity(1e-322, Dimension.LENGTH);
    assertThatThrownBy(() -> new Expected.Amount(small, Unit.parse("km")))
        .isInstanceOf(ModelException.class)
        .hasMessage(
            "file: value is "
                + small.si()
                + " in SI; wanted: a size that is between about 1e-300 and 1e300 in km as well");
    Quantity large = new Quantity(1e306, Dimension.LENGTH);
    assertThatThrownBy(() -> new Expected.Amount(large, Unit.parse("mm")))
        .isInstanceOf(ModelException.class)
        .hasMessageStartingWith("file: value is 1.0E306 in SI; wanted: a size");
    assertThatThrownBy(() -> new Expected.Amount(large, Unit.parse("N")))
        .isInstanceOf(ModelException.class)
        .hasMessage("file: value is N; wanted: a unit that measures a length");
    Unit span = new Unit("span", Dimension.MOMENT, 0.2, "from memory");
    Expected.Amount own = new Expected.Amount(new Quantity(1, Dimension.MOMENT), span);
    assertThatThrownBy(() -> expecting(own))
        .isInstanceOf(ModelException.class)
        .hasMessage("expect: value is span; wanted: a unit that its symbol states");
  }

  private static DeviceFile withGround(Device device, Foundation... foundations) {
    return new DeviceFile(
        device, About.NOTHING, UnitSystem.SI, List.of(), List.of(), Map.of(), List.of(foundations));
  }

  private static DeviceFile withLimit(Device device, String name, Variation variation) {
    return new DeviceFile(
        device,
        About.NOTHING,
        UnitSystem.SI,
        List.of(),
        List.of(),
        Map.of(name, variation),
        List.of());
  }

  @Test
  void aLoadThatIsNamedAllIsNotTakenForAllLoads() {
    Device device =
        Device.named("x")
            .point("P", 0, 0)
            .member("m", "P")
            .force("all", "m", "P", Vector.of(1, 0))
            .build();
    DeviceFile file = withLimit(device, "one", Variation.of("all"));
    assertThat(DeviceFileWriter.write(file)).contains("one: {vary: [all]}");
    assertThat(Reads.file(DeviceFileWriter.write(file))).isEqualTo(file);
  }

  @Test
  void whatCannotBeWrittenIsRefused() {
    Device device = Device.named("x").member("m").build();
    UnitSystem own = UnitSystem.SI.with(new Unit("cubit", Dimension.LENGTH, 0.45, "from memory"));
    assertThatThrownBy(() -> new DeviceFile(device, About.NOTHING, own, List.of(), List.of()))
        .isInstanceOf(ModelException.class)
        .hasMessage("units: length is cubit; wanted: a unit that its symbol states");
    UnitSystem percent = UnitSystem.SI.with(Unit.parse("%"));
    assertThatThrownBy(() -> new DeviceFile(device, About.NOTHING, percent, List.of(), List.of()))
        .isInstanceOf(ModelException.class);
    Expectation twice =
        new Expectation(
            Ask.parse("outcome"),
            new Expected.Words("in balance"),
            0,
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    assertThatThrownBy(
            () ->
                new DeviceFile(
                    device, About.NOTHING, UnitSystem.SI, List.of(), List.of(twice, twice)))
        .isInstanceOf(ModelException.class)
        .hasMessage("expect: ask is \"outcome\"; wanted: each ask once");
    Foundation foundation = Foundation.of("sill", 1);
    assertThatThrownBy(() -> withGround(device, foundation))
        .isInstanceOf(ModelException.class)
        .hasMessage("ground: base is \"sill\"; wanted: the name of a contact base of the device");
    Device based =
        Device.named("x")
            .point("P", 0, 0)
            .member("m", "P")
            .connect(new ContactBase("sill", "P", "m", "ground", Direction.UP, 1, 0, 0))
            .build();
    assertThat(withGround(based, foundation).foundations()).containsExactly(foundation);
    assertThatThrownBy(() -> withGround(based, foundation, foundation))
        .hasMessage("ground: base is \"sill\"; wanted: each contact base once");
    assertThatThrownBy(() -> withLimit(device, "growth", Variation.of("hand")))
        .isInstanceOf(ModelException.class)
        .hasMessage("growth: limit is hand; wanted: the name of a given load (there is none)");
    assertThatThrownBy(() -> withLimit(device, " growth", Variation.of("hand")))
        .isInstanceOf(ModelException.class);
    assertThatThrownBy(
            () ->
                new Expectation(
                    twice.ask(),
                    twice.value(),
                    3,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()))
        .isInstanceOf(ModelException.class)
        .hasMessage("outcome: digits is 3; wanted: none for words");
    assertThatThrownBy(() -> new Expected.Words(" \n"))
        .isInstanceOf(ModelException.class)
        .hasMessage("file: value is empty; wanted: a text without control characters");
    assertThat(DeviceFile.of(device).units()).isEqualTo(UnitSystem.SI);
  }
}
