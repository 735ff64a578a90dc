package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Problem;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.study.Model;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.QuantityException;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a device file holds.
 *
 * @param device the device
 * @param about texts about it
 * @param units units of the bare numbers in the file and of the answers
 * @param asks further asks to be answered, in order
 * @param expectations expected answers in order, one at most for each ask
 * @param limits what is varied until the device gives way, by name, in order
 * @param foundations what is under the contact bases, one at most for each
 * @param side the device as seen along its plane, if that is asked
 * @param tables what was taken from tables, one at most for each connection
 * @param travel how the device is to be driven; empty if the file does not say
 * @param inquiries what is asked beyond that
 * @param sizing sections, materials and details; empty if the file has none
 * @param driving the loads that grow until something gives; empty without a sizing
 */
public record DeviceFile(
    Device device,
    About about,
    UnitSystem units,
    List<Ask> asks,
    List<Expectation> expectations,
    Map<String, Variation> limits,
    List<Foundation> foundations,
    Optional<SideStatement> side,
    List<TableFriction> tables,
    Optional<TravelPlan> travel,
    Inquiries inquiries,
    Optional<SizingStatement> sizing,
    Optional<Driving> driving) {

  /**
   * Copies lists and map and checks that the file can be written.
   *
   * @param device the device
   * @param about texts about it
   * @param units units of the bare numbers in the file and of the answers
   * @param asks further asks to be answered, in order
   * @param expectations expected answers in order, one at most for each ask
   * @param limits what is varied until the device gives way, by name, in order
   * @param foundations what is under the contact bases, one at most for each
   * @param side the device as seen along its plane, if that is asked
   * @param tables what was taken from tables, one at most for each connection
   * @param travel how the device is to be driven; empty if the file does not say
   * @param inquiries what is asked beyond that
   * @param sizing sections, materials and details; empty if the file has none
   * @param driving the loads that grow until something gives; empty without a sizing
   * @throws ModelException if a unit is not known by its symbol, an ask has two expectations, a
   *     limit or the travel names what the device does not have, a foundation is under no contact
   *     base of the device or under one that has another already, the side view names what the
   *     device does not have, a connection has other friction than the table, sizing or driving
   *     name what the device does not have, or there is a driving without a sizing
   */
  public DeviceFile {
    asks = List.copyOf(asks);
    expectations = List.copyOf(expectations);
    limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
    foundations = List.copyOf(foundations);
    requireBases(device, foundations);
    travel.ifPresent(plan -> requireDriven(device, plan));
    side.ifPresent(one -> one.check(device));
    inquiries.check(device, travel);
    sizing.ifPresent(one -> one.check(device));
    driving.ifPresent(one -> LimitAsk.check("driving", one.variation(), device));
    if (driving.isPresent() && sizing.isEmpty()) {
      throw new ModelException("driving", "sizing", "none", "sections, of which one gives first");
    }
    inquiries.studies().check(parts(device, foundations, sizing, driving, travel));
    tables = List.copyOf(tables);
    requireOnce(tables);
    tables.forEach(one -> one.check(device));
    limits.forEach((name, variation) -> LimitAsk.check(name, variation, device));
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
   * A file in which nothing is asked beyond balance, limits and travel.
   *
   * @param device the device
   * @param about texts about it
   * @param units units of the bare numbers in the file and of the answers
   * @param asks further asks to be answered, in order
   * @param expectations expected answers in order, one at most for each ask
   * @param limits what is varied until the device gives way, by name, in order
   * @param foundations what is under the contact bases, one at most for each
   * @param side the device as seen along its plane, if that is asked
   * @param tables what was taken from tables, one at most for each connection
   * @param travel how the device is to be driven; empty if the file does not say
   * @throws ModelException as the whole record does
   */
  public DeviceFile(
      Device device,
      About about,
      UnitSystem units,
      List<Ask> asks,
      List<Expectation> expectations,
      Map<String, Variation> limits,
      List<Foundation> foundations,
      Optional<SideStatement> side,
      List<TableFriction> tables,
      Optional<TravelPlan> travel) {
    this(
        device,
        about,
        units,
        asks,
        expectations,
        limits,
        foundations,
        side,
        tables,
        travel,
        Inquiries.NOTHING,
        Optional.empty(),
        Optional.empty());
  }

  /**
   * A file with a sizing in place of what it had.
   *
   * @param stated sections, materials and details
   * @param growing the loads that grow until something gives, if any
   * @return a copy
   * @throws ModelException as the whole record does
   */
  public DeviceFile with(SizingStatement stated, Optional<Driving> growing) {
    return new DeviceFile(
        device,
        about,
        units,
        asks,
        expectations,
        limits,
        foundations,
        side,
        tables,
        travel,
        inquiries,
        Optional.of(stated),
        growing);
  }

  /**
   * A file without side view and travel, and with nothing taken from tables.
   *
   * @param device the device
   * @param about texts about it
   * @param units units of the bare numbers in the file and of the answers
   * @param asks further asks to be answered, in order
   * @param expectations expected answers in order, one at most for each ask
   * @param limits what is varied until the device gives way, by name, in order
   * @param foundations what is under the contact bases, one at most for each
   * @throws ModelException as the whole record does
   */
  public DeviceFile(
      Device device,
      About about,
      UnitSystem units,
      List<Ask> asks,
      List<Expectation> expectations,
      Map<String, Variation> limits,
      List<Foundation> foundations) {
    this(
        device,
        about,
        units,
        asks,
        expectations,
        limits,
        foundations,
        Optional.empty(),
        List.of(),
        Optional.empty());
  }

  /**
   * A file without limits, ground and travel.
   *
   * @param device the device
   * @param about texts about it
   * @param units units of the bare numbers in the file and of the answers
   * @param asks further asks to be answered, in order
   * @param expectations expected answers in order, one at most for each ask
   * @throws ModelException if a unit is not known by its symbol, or an ask has two expectations
   */
  public DeviceFile(
      Device device,
      About about,
      UnitSystem units,
      List<Ask> asks,
      List<Expectation> expectations) {
    this(device, about, units, asks, expectations, Map.of(), List.of());
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

  private static FileParts parts(
      Device device,
      List<Foundation> foundations,
      Optional<SizingStatement> sizing,
      Optional<Driving> driving,
      Optional<TravelPlan> travel) {
    return new FileParts(
        new Model(device, foundations, sizing.map(SizingStatement::sizing)),
        driving.map(Driving::variation),
        travel);
  }

  /**
   * The device with the ground under it and what it is made of.
   *
   * @return the model of which studies are made
   */
  public Model model() {
    return parts(device, foundations, sizing, driving, travel).model();
  }

  /**
   * The file with other inquiries.
   *
   * @param others what is asked beyond balance, limits and travel
   * @return a copy
   * @throws ModelException if the device cannot be asked so
   */
  public DeviceFile with(Inquiries others) {
    return new DeviceFile(
        device,
        about,
        units,
        asks,
        expectations,
        limits,
        foundations,
        side,
        tables,
        travel,
        others,
        sizing,
        driving);
  }

  private static void requireDriven(Device device, TravelPlan plan) {
    List<Problem> problems = TravelCheck.problems(device, plan);
    if (!problems.isEmpty()) {
      throw new ModelException(problems);
    }
  }

  private static void requireOnce(List<TableFriction> tables) {
    Set<String> seen = new HashSet<>();
    for (TableFriction one : tables) {
      if (!seen.add(one.part())) {
        throw new ModelException(
            one.part(), "friction", "from the friction table again", "one row for it");
      }
    }
  }

  private static void requireBases(Device device, List<Foundation> foundations) {
    Set<String> seen = new HashSet<>();
    for (Foundation foundation : foundations) {
      String base = foundation.base();
      boolean known = device.connection(base).filter(ContactBase.class::isInstance).isPresent();
      if (!known || !seen.add(base)) {
        throw new ModelException(
            "ground",
            "base",
            '"' + base + '"',
            known ? "each contact base once" : "the name of a contact base of the device");
      }
    }
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
