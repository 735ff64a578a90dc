package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.QuantityException;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What a device file holds.
 *
 * @param device the device
 * @param about texts about it
 * @param units units of the bare numbers in the file and of the answers
 * @param asks further asks to be answered, in order
 * @param expectations expected answers in order, one at most for each ask
 */
public record DeviceFile(
    Device device, About about, UnitSystem units, List<Ask> asks, List<Expectation> expectations) {

  /**
   * Copies the lists and checks that the file can be written.
   *
   * @param device the device
   * @param about texts about it
   * @param units units of the bare numbers in the file and of the answers
   * @param asks further asks to be answered, in order
   * @param expectations expected answers in order, one at most for each ask
   * @throws ModelException if a unit is not known by its symbol, or an ask has two expectations
   */
  public DeviceFile {
    asks = List.copyOf(asks);
    expectations = List.copyOf(expectations);
    for (Dimension dimension : Dimension.values()) {
      requireReadable(dimension, units.unit(dimension));
    }
    Set<String> expected = new HashSet<>();
    for (Expectation expectation : expectations) {
      if (!expected.add(expectation.ask().text())) {
        throw new ModelException(
            "expect", "ask", '"' + expectation.ask().text() + '"', "each ask once");
      }
      if (expectation.value() instanceof Expected.Amount amount
          && !isKnown(amount.unit().dimension(), amount.unit())) {
        throw new ModelException(
            "expect", "value", amount.unit().symbol(), "a unit that its symbol states");
      }
    }
  }

  /**
   * A file that holds a device and nothing else, in SI units.
   *
   * @param device the device
   * @return the file
   */
  public static DeviceFile of(Device device) {
    return new DeviceFile(device, About.NOTHING, UnitSystem.SI, List.of(), List.of());
  }

  private static void requireReadable(Dimension dimension, Unit unit) {
    boolean plain = dimension != Dimension.NUMBER || unit.equals(dimension.si());
    boolean basic = dimension == Dimension.LENGTH || dimension == Dimension.FORCE;
    boolean listed = !basic || Unit.all().contains(unit);
    if (!plain || !listed || !isKnown(dimension, unit)) {
      throw new ModelException(
          "units", UnitsReader.key(dimension), unit.symbol(), "a unit that its symbol states");
    }
  }

  private static boolean isKnown(Dimension dimension, Unit unit) {
    try {
      return Unit.parse(unit.symbol(), dimension).equals(unit);
    } catch (QuantityException e) {
      return false;
    }
  }
}
