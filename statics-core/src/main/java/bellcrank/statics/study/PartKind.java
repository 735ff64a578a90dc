package bellcrank.statics.study;

import static bellcrank.statics.units.Dimension.ANGLE;
import static bellcrank.statics.units.Dimension.FORCE;
import static bellcrank.statics.units.Dimension.FORCE_PER_LENGTH;
import static bellcrank.statics.units.Dimension.FORCE_PER_VOLUME;
import static bellcrank.statics.units.Dimension.LENGTH;
import static bellcrank.statics.units.Dimension.MASS;
import static bellcrank.statics.units.Dimension.MOMENT;
import static bellcrank.statics.units.Dimension.MOMENT_PER_ANGLE;
import static bellcrank.statics.units.Dimension.NUMBER;
import static bellcrank.statics.units.Dimension.PRESSURE;

import bellcrank.statics.study.internal.Rates;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The numbers that belong to one part by its name, each by its words: {@code friction of heel}. */
enum PartKind {
  MASS_OF("mass", MASS, DeviceSlots.MASS),
  MOMENT_OF("moment", MOMENT, DeviceSlots.MOMENT),
  START("start", FORCE_PER_LENGTH, DeviceSlots.START),
  END("end", FORCE_PER_LENGTH, DeviceSlots.END),
  STIFFNESS("stiffness", FORCE_PER_LENGTH, DeviceSlots.STIFFNESS),
  FREE_LENGTH("free length", LENGTH, DeviceSlots.FREE_LENGTH),
  TORSION_STIFFNESS("torsion stiffness", MOMENT_PER_ANGLE, DeviceSlots.TORSION_STIFFNESS),
  TURNED("turned angle", ANGLE, DeviceSlots.TURNED),
  FRICTION("friction", NUMBER, DeviceSlots.FRICTION),
  KINETIC("kinetic friction", NUMBER, DeviceSlots.KINETIC),
  WIDTH("width", LENGTH, DeviceSlots.WIDTH),
  RADIUS("radius", LENGTH, DeviceSlots.RADIUS),
  MEAN_RADIUS("mean radius", LENGTH, DeviceSlots.MEAN_RADIUS),
  LEAD("lead", LENGTH, DeviceSlots.LEAD),
  EFFICIENCY("efficiency", NUMBER, DeviceSlots.EFFICIENCY),
  LENGTH_OF("length", LENGTH, GroundSlots.LENGTH),
  ADHESION("adhesion", PRESSURE, GroundSlots.ADHESION),
  BEARING("bearing", PRESSURE, GroundSlots.BEARING),
  STRENGTH("undrained strength", PRESSURE, GroundSlots.STRENGTH),
  FRICTION_ANGLE("friction angle", ANGLE, GroundSlots.FRICTION_ANGLE),
  COHESION("cohesion", PRESSURE, GroundSlots.COHESION),
  UNIT_WEIGHT("unit weight", FORCE_PER_VOLUME, GroundSlots.UNIT_WEIGHT),
  OVERBURDEN("overburden", PRESSURE, GroundSlots.OVERBURDEN),
  CLEAT_DEPTH("cleat depth", LENGTH, GroundSlots.CLEAT_DEPTH),
  LIMIT("working load limit", FORCE, SizingSlots.LIMIT),
  LEG_ANGLE("leg angle", ANGLE, SizingSlots.LEG_ANGLE),
  DIAMETER("diameter", LENGTH, SizingSlots.DIAMETER),
  GAP("gap", LENGTH, SizingSlots.GAP),
  THROAT("throat", LENGTH, SizingSlots.THROAT);

  private final String words;
  private final Dimension dimension;

  @SuppressWarnings("ImmutableEnumChecker") // made by List.of
  private final List<? extends Slot<?>> slots;

  PartKind(String words, Dimension dimension, List<? extends Slot<?>> slots) {
    this.words = words;
    this.dimension = dimension;
    this.slots = slots;
  }

  String words() {
    return words;
  }

  InputNumber of(String part) {
    return new OfPart(this, part);
  }

  /** The number of a part. */
  private record OfPart(PartKind kind, String part) implements InputNumber {

    @Override
    public String text() {
      return kind.words + " of " + InputText.name(part);
    }

    @Override
    public Dimension dimension() {
      return kind.dimension;
    }

    @Override
    public double read(Draft draft) {
      for (Slot<?> slot : kind.slots) {
        Optional<Double> found = slot.read(draft, part);
        if (found.isPresent()) {
          return found.get();
        }
      }
      throw missing(draft);
    }

    @Override
    public void write(Draft draft, double value) {
      for (Slot<?> slot : kind.slots) {
        if (slot.write(draft, part, value)) {
          return;
        }
      }
      throw missing(draft);
    }

    @Override
    public Optional<Rates> rates(Draft draft) {
      // with its first friction a part gets a force that it did not have
      return kind == FRICTION && read(draft) == 0
          ? Optional.empty()
          : Optional.of(Rates.ofNumber(kind.words, part));
    }

    private RuntimeException missing(Draft draft) {
      List<String> known = new ArrayList<>();
      kind.slots.forEach(slot -> known.addAll(slot.names(draft)));
      return draft.missing(kind.words, part, "a part with a stated " + kind.words, known);
    }
  }
}
