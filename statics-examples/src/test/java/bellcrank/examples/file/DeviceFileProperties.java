package bellcrank.examples.file;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.util.Optional;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class DeviceFileProperties {

  private static final AmountText US = new AmountText(UnitSystem.US, 9.80665);

  @Property(tries = 200)
  void whatIsWrittenIsReadBackEqual(@ForAll long seed) {
    DeviceFile file = RandomDevice.file(seed);
    String text = DeviceFileWriter.write(file);
    ReadResult result = DeviceFileReader.read(text, "random");
    assertThat(Reads.sentences(result)).as(text).isEmpty();
    assertThat(((ReadResult.Read) result).file()).as(text).isEqualTo(file);
    assertThat(DeviceFileWriter.write(((ReadResult.Read) result).file())).isEqualTo(text);
  }

  @Property(tries = 300)
  void everyNumberIsWrittenExactly(@ForAll @DoubleRange(min = -1e300, max = 1e300) double number) {
    for (Dimension dimension : Dimension.values()) {
      String text = US.withUnit(number + 0.0, dimension);
      assertThat(US.si(text, dimension)).as(text).hasValue(number + 0.0);
    }
  }

  @Property(tries = 300)
  void everyNumberIsWrittenExactlyInEveryUnit(
      @ForAll @DoubleRange(min = -1e290, max = 1e290) double number) {
    for (Unit unit : Unit.all()) {
      String text = US.withUnit(number, unit);
      assertThat(US.si(text, unit.dimension())).as(text).hasValue(number + 0.0);
      assertThat(Quantity.unitOf(text, unit.dimension(), US.units())).as(text).isEqualTo(unit);
    }
  }

  @Property
  void everyMassIsWrittenExactly(@ForAll @DoubleRange(min = 0, max = 1e6) double mass) {
    Optional<Double> read =
        new Values(UnitSystem.US, 9.80665)
            .mass(
                new Spot(
                    new Node.Text(Mark.START, US.mass(mass)), Fields.TOP, new Problems("mass")));
    assertThat(read).hasValue(mass);
  }

  @Property
  void everyDirectionIsWrittenExactly(@ForAll @DoubleRange(min = -7, max = 7) double angle) {
    Direction direction = Direction.ofAngle(angle);
    String device =
        """
        format: 1
        device: x
        units: us
        points: {A: [0, 0]}
        members: {m: {points: [A]}}
        loads: {f: {force: 1 N, member: m, at: A, direction: %s}}
        """
            .formatted(new DirectionText(US).of(direction).replace('\n', ' '));
    assertThat(Reads.device(device).loads().get(0))
        .hasFieldOrPropertyWithValue("vector", direction.times(1));
  }

  @Property
  void noTextBringsTheReaderDown(@ForAll String text) {
    assertThat(DeviceFileReader.read(text, "any")).isInstanceOf(ReadResult.Refused.class);
    assertThat(DeviceFileReader.read("format: 1\n" + text, "any"))
        .isInstanceOf(ReadResult.Refused.class);
  }

  @Example
  void smallNumbersAreWrittenInFull() {
    assertThat(AmountText.number(Double.MIN_VALUE)).isEqualTo("4.9e-324");
    assertThat(AmountText.number(1e-6)).isEqualTo("0.000001");
    assertThat(AmountText.number(-0.0)).isEqualTo("0");
    assertThat(AmountText.number(1e22)).isEqualTo("1e+22");
  }
}
