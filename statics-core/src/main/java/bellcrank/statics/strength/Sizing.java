package bellcrank.statics.strength;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Device;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the parts of a device are made of and how they are joined, by part name; separate from the
 * device, so that one device can be tried with several sizings.
 *
 * <p>Immutable. Names are checked when it meets a device.
 */
public final class Sizing {

  private final Method method;
  private final Map<String, Sized> parts;
  private final Map<String, Map<Bar, Sized>> bars;
  private final List<Detail> details;

  private Sizing(
      Method method,
      Map<String, Sized> parts,
      Map<String, Map<Bar, Sized>> bars,
      List<Detail> details) {
    this.method = method;
    this.parts = parts;
    this.bars = bars;
    this.details = details;
  }

  /**
   * A sizing without any part.
   *
   * @param method how forces are held against strengths, for the whole device
   * @return the sizing
   */
  public static Sizing of(Method method) {
    return new Sizing(method, Map.of(), Map.of(), List.of());
  }

  /**
   * How forces are held against strengths.
   *
   * @return the method
   */
  public Method method() {
    return method;
  }

  /**
   * Gives a member, all its bars, or a strut a section and a material.
   *
   * @param part name of a member or strut
   * @param section section of one of its parallel parts
   * @param material what it is made of
   * @return a copy; what was stated for the same part before is replaced
   */
  public Sizing with(String part, Section section, Material material) {
    Map<String, Sized> changed = new LinkedHashMap<>(parts);
    changed.put(part, new Sized(section, material));
    return new Sizing(method, changed, bars, details);
  }

  /**
   * Gives one bar of a member a section and a material, where it differs from the other bars.
   *
   * @param member name of the member
   * @param bar the bar, its points in the order in which the member has them
   * @param section section of one of its parallel parts
   * @param material what it is made of
   * @return a copy; what was stated for the same bar before is replaced
   */
  public Sizing with(String member, Bar bar, Section section, Material material) {
    Map<String, Map<Bar, Sized>> changed = new LinkedHashMap<>(bars);
    Map<Bar, Sized> own = new LinkedHashMap<>(changed.getOrDefault(member, Map.of()));
    own.put(bar, new Sized(section, material));
    changed.put(member, own);
    return new Sizing(method, parts, changed, details);
  }

  /**
   * Adds a detail.
   *
   * @param detail how a part is held, joined or rated
   * @return a copy
   */
  public Sizing with(Detail detail) {
    List<Detail> changed = new ArrayList<>(details);
    changed.add(detail);
    return new Sizing(method, parts, bars, List.copyOf(changed));
  }

  /**
   * The same sections and materials with other details.
   *
   * @param others all details of the copy
   * @return a copy; details stated before are left out
   */
  public Sizing withDetails(List<Detail> others) {
    return new Sizing(method, parts, bars, List.copyOf(others));
  }

  /**
   * Section and material of a strut, or of a member as a whole.
   *
   * @param part name of a member or strut
   * @return what was stated, if it was
   */
  public Optional<Sized> sized(String part) {
    return Optional.ofNullable(parts.get(part));
  }

  /**
   * Section and material of a bar.
   *
   * @param member name of the member
   * @param bar the bar
   * @return what was stated for the bar, else for the member, if anything was
   */
  public Optional<Sized> sized(String member, Bar bar) {
    Sized own = bars.getOrDefault(member, Map.of()).get(bar);
    return own == null ? sized(member) : Optional.of(own);
  }

  /**
   * Names of the members and struts that have a section and a material as a whole.
   *
   * @return names in the order in which they were stated
   */
  public List<String> parts() {
    return List.copyOf(parts.keySet());
  }

  /**
   * The bars that have a section and a material of their own.
   *
   * @return for each member its bars, in the order in which they were stated
   */
  public Map<String, List<Bar>> bars() {
    Map<String, List<Bar>> all = new LinkedHashMap<>();
    bars.forEach((member, own) -> all.put(member, List.copyOf(own.keySet())));
    return java.util.Collections.unmodifiableMap(all);
  }

  /**
   * The details.
   *
   * @return in the order in which they were stated
   */
  public List<Detail> details() {
    return details;
  }

  /**
   * Checks that a device has what this names, and that it is what it is taken for.
   *
   * @param device the device
   * @throws bellcrank.statics.device.ModelException listing everything that does not fit
   */
  public void check(Device device) {
    SizingCheck.of(this, Rules.of(method), device);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Sizing that
        && method == that.method
        && parts.equals(that.parts)
        && bars.equals(that.bars)
        && details.equals(that.details);
  }

  @Override
  public int hashCode() {
    return java.util.Objects.hash(method, parts, bars, details);
  }
}
