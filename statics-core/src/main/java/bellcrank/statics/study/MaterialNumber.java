package bellcrank.statics.study;

import bellcrank.statics.device.Bar;
import bellcrank.statics.strength.Material;
import bellcrank.statics.strength.PinJoint;
import bellcrank.statics.strength.Sized;
import bellcrank.statics.strength.Sizing;
import bellcrank.statics.study.internal.Rates;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A strength or the elasticity of what a part is made of: a member or strut, with all bars of it
 * that have a section of their own, or the pin of a joint.
 */
record MaterialNumber(Optional<Material.Strength> strength, String part) implements InputNumber {

  static final String ELASTICITY = "elasticity";

  @Override
  public String text() {
    return words() + " of " + InputText.name(part);
  }

  private String words() {
    return strength.map(Material.Strength::words).orElse(ELASTICITY);
  }

  @Override
  public Dimension dimension() {
    return Dimension.PRESSURE;
  }

  @Override
  public double read(Draft draft) {
    return materials(draft, part).stream()
        .flatMap(material -> of(material).stream())
        .findFirst()
        .orElseThrow(
            () ->
                draft.missing(
                    words(),
                    part,
                    "a part with a stated " + words() + " of its material",
                    known(draft)));
  }

  private Optional<Double> of(Material material) {
    return strength.isPresent()
        ? material.strength(strength.get())
        : Optional.of(material.elasticity());
  }

  private static List<Material> materials(Draft draft, String part) {
    List<Material> all = new ArrayList<>();
    draft
        .sizing()
        .ifPresent(
            sizing -> {
              sizing.sized(part).ifPresent(sized -> all.add(sized.material()));
              sizing
                  .bars()
                  .getOrDefault(part, List.of())
                  .forEach(bar -> all.add(sizing.sized(part, bar).orElseThrow().material()));
            });
    draft.part(PinJoint.class, part).ifPresent(pin -> all.add(pin.material()));
    return all;
  }

  private List<String> known(Draft draft) {
    List<String> names = new ArrayList<>();
    draft
        .sizing()
        .ifPresent(
            sizing -> {
              names.addAll(sizing.parts());
              names.addAll(sizing.bars().keySet());
            });
    draft.parts(PinJoint.class).forEach(pin -> names.add(pin.part()));
    return names.stream()
        .distinct()
        .filter(
            name -> materials(draft, name).stream().anyMatch(material -> of(material).isPresent()))
        .toList();
  }

  @Override
  public void write(Draft draft, double value) {
    read(draft);
    Sizing sizing = draft.sizing().orElseThrow();
    Optional<Sized> whole = sizing.sized(part);
    Sizing changed = sizing;
    for (Bar bar : sizing.bars().getOrDefault(part, List.of())) {
      Sized own = sizing.sized(part, bar).orElseThrow();
      changed = changed.with(part, bar, own.section(), with(own.material(), value));
    }
    if (whole.isPresent()) {
      changed = changed.with(part, whole.get().section(), with(whole.get().material(), value));
    }
    draft.sizing(changed);
    draft
        .part(PinJoint.class, part)
        .ifPresent(
            pin ->
                draft.put(
                    new PinJoint(
                        pin.part(),
                        pin.diameter(),
                        pin.planes(),
                        with(pin.material(), value),
                        pin.plates(),
                        pin.gap())));
  }

  /** No force depends on it. */
  @Override
  public Optional<Rates> rates(Draft draft) {
    return Optional.of(Rates.NONE);
  }

  /** The material with another number, where it has that number at all. */
  private Material with(Material material, double value) {
    if (of(material).isEmpty()) {
      return material;
    }
    Map<Material.Strength, Double> strengths = new LinkedHashMap<>(material.strengths());
    strength.ifPresent(one -> strengths.put(one, value));
    return new Material(
        material.name(),
        material.kind(),
        strength.isPresent() ? material.elasticity() : value,
        material.density(),
        strengths,
        material.source());
  }
}
