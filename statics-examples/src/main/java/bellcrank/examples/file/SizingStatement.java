package bellcrank.examples.file;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.strength.ChainSeat;
import bellcrank.statics.strength.CheckResult.NotChecked;
import bellcrank.statics.strength.ColumnEnds;
import bellcrank.statics.strength.Method;
import bellcrank.statics.strength.Rules;
import bellcrank.statics.strength.Section;
import bellcrank.statics.strength.Sizing;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Sections, materials and details of a device, as a file states them.
 *
 * @param method how forces are held against strengths
 * @param materials materials of the file
 * @param parts section and material by the name of a member or strut, in order
 * @param columns how parts in compression are held
 * @param pins pins with their plates
 * @param welds fillet welds
 * @param ratings working load limits
 * @param seats chains in notches
 * @param rules factors in place of those of the method
 */
public record SizingStatement(
    Method method,
    Materials materials,
    Map<String, PartStatement> parts,
    List<ColumnEnds> columns,
    List<PinStatement> pins,
    List<WeldStatement> welds,
    List<RatingStatement> ratings,
    List<ChainSeat> seats,
    List<FactorStatement> rules) {

  private static final String NO_MATERIAL = "no material is stated";

  /**
   * Copies lists and map and checks that everything in it can be made.
   *
   * @param method how forces are held against strengths
   * @param materials materials of the file
   * @param parts section and material by name
   * @param columns how parts in compression are held
   * @param pins pins with their plates
   * @param welds fillet welds
   * @param ratings working load limits
   * @param seats chains in notches
   * @param rules factors in place of those of the method
   * @throws ModelException if a material is not known or a number is out of range
   */
  public SizingStatement {
    parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
    columns = List.copyOf(columns);
    pins = List.copyOf(pins);
    welds = List.copyOf(welds);
    ratings = List.copyOf(ratings);
    seats = List.copyOf(seats);
    rules = List.copyOf(rules);
    completed(method, materials, parts, columns, pins, welds, ratings, seats);
  }

  /** With some material where a joint has none, so that the rest of it is checked as well. */
  private static Sizing completed(
      Method method,
      Materials materials,
      Map<String, PartStatement> parts,
      List<ColumnEnds> columns,
      List<PinStatement> pins,
      List<WeldStatement> welds,
      List<RatingStatement> ratings,
      List<ChainSeat> seats) {
    List<PinStatement> whole = pins.stream().map(PinStatement::completed).toList();
    List<WeldStatement> joined = welds.stream().map(WeldStatement::completed).toList();
    return made(method, materials, parts, columns, whole, joined, ratings, seats);
  }

  /** A sizing with nothing in it but a method and materials. */
  static SizingStatement of(Method method, Materials materials) {
    return new SizingStatement(
        method, materials, Map.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
        List.of());
  }

  /** This method and these materials with one part alone. */
  SizingStatement withPart(String name, PartStatement part) {
    return new SizingStatement(
        method, materials, Map.of(name, part), columns, pins, welds, ratings, seats, rules);
  }

  /** With one column alone. */
  SizingStatement withColumn(ColumnEnds column) {
    return new SizingStatement(
        method, materials, parts, List.of(column), pins, welds, ratings, seats, rules);
  }

  /** With one pin alone. */
  SizingStatement withPin(PinStatement pin) {
    return new SizingStatement(
        method, materials, parts, columns, List.of(pin), welds, ratings, seats, rules);
  }

  /** With one group of welds alone, and the parts whose thickness it may go by. */
  SizingStatement withWeld(WeldStatement weld, Map<String, PartStatement> all) {
    Optional<Double> thickest = weld.thickness().or(() -> thickest(all, weld.part()));
    return new SizingStatement(
        method,
        materials,
        parts,
        columns,
        pins,
        List.of(weld.inThickness(thickest)),
        ratings,
        seats,
        rules);
  }

  /** With one rating alone. */
  SizingStatement withRating(RatingStatement rating) {
    return new SizingStatement(
        method, materials, parts, columns, pins, welds, List.of(rating), seats, rules);
  }

  /** With one seat alone. */
  SizingStatement withSeat(ChainSeat seat) {
    return new SizingStatement(
        method, materials, parts, columns, pins, welds, ratings, List.of(seat), rules);
  }

  /**
   * The sizing.
   *
   * @return sections, materials and details as far as they are stated
   */
  public Sizing sizing() {
    return made(method, materials, parts, columns, pins, welds, ratings, seats);
  }

  private static Sizing made(
      Method method,
      Materials materials,
      Map<String, PartStatement> parts,
      List<ColumnEnds> columns,
      List<PinStatement> pins,
      List<WeldStatement> welds,
      List<RatingStatement> ratings,
      List<ChainSeat> seats) {
    Sizing sizing = Sizing.of(method);
    for (Map.Entry<String, PartStatement> entry : parts.entrySet()) {
      sizing = with(sizing, materials, entry.getKey(), entry.getValue());
    }
    for (ColumnEnds ends : columns) {
      sizing = sizing.with(ends);
    }
    for (PinStatement pin : pins) {
      sizing = pin.joint(materials).map(sizing::with).orElse(sizing);
    }
    for (WeldStatement weld : welds) {
      Optional<Double> thickest = thickest(parts, weld.part());
      sizing = weld.weld(materials, thickest).map(sizing::with).orElse(sizing);
    }
    for (RatingStatement rating : ratings) {
      sizing = sizing.with(rating.rating());
    }
    for (ChainSeat seat : seats) {
      sizing = sizing.with(seat);
    }
    return sizing;
  }

  private static Sizing with(Sizing sizing, Materials materials, String name, PartStatement part) {
    List<Sizing> changed = new ArrayList<>(List.of(sizing));
    if (part.whole().section().isPresent() && part.whole().material().isPresent()) {
      Section section = part.whole().section().get().section();
      changed.set(
          0,
          sizing.with(
              name, section, materials.of(part.whole().material().get(), section.thickest())));
    }
    part.bars()
        .forEach(
            (bar, own) -> {
              Optional<String> material = own.material().or(() -> part.whole().material());
              Optional<SectionStatement> stated = own.section().or(() -> part.whole().section());
              if (stated.isPresent() && material.isPresent()) {
                Section section = stated.get().section();
                changed.set(
                    0,
                    changed
                        .get(0)
                        .with(
                            name, bar, section, materials.of(material.get(), section.thickest())));
              }
            });
    return changed.get(0);
  }

  private static Optional<Double> thickest(Map<String, PartStatement> parts, String part) {
    return Optional.ofNullable(parts.get(part))
        .flatMap(one -> one.whole().section())
        .map(section -> section.section().thickest());
  }

  /**
   * The rules of the method with the file's own factors.
   *
   * @return the rules
   */
  public Rules allRules() {
    Rules all = Rules.of(method);
    for (FactorStatement rule : rules) {
      all = rule.in(all);
    }
    return all;
  }

  /**
   * Joints that cannot be checked for want of a material.
   *
   * @return parts and reasons
   */
  public List<NotChecked> unfinished() {
    List<NotChecked> open = new ArrayList<>();
    for (PinStatement pin : pins) {
      if (pin.joint(materials).isEmpty()) {
        open.add(new NotChecked(pin.part(), "pin with its plates", NO_MATERIAL));
      }
    }
    for (WeldStatement weld : welds) {
      if (weld.material().isEmpty()) {
        open.add(new NotChecked(weld.part(), weld.name(), NO_MATERIAL));
      }
    }
    return open;
  }

  /**
   * Checks that a device has what the sizing names.
   *
   * @param device the device
   * @throws ModelException listing everything that does not fit
   */
  public void check(Device device) {
    completed(method, materials, parts, columns, pins, welds, ratings, seats).check(device);
    for (Map.Entry<String, PartStatement> part : parts.entrySet()) {
      checkPart(part.getKey(), part.getValue(), device);
    }
  }

  /** Names count as well where a section or a material is still missing. */
  private void checkPart(String name, PartStatement part, Device device) {
    Section any = FormedSection.of(SectionForm.ROUND, List.of(1.0)).section();
    Sizing sizing = Sizing.of(method).with(name, any, materials.of(Materials.ANY, 1));
    for (Bar bar : part.bars().keySet()) {
      sizing = sizing.with(name, bar, any, materials.of(Materials.ANY, 1));
    }
    sizing.check(device);
  }
}
