package bellcrank.statics.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class UnitSystemTest {

  @Test
  void siAndUsHaveTheUsualUnits() {
    assertThat(symbols(UnitSystem.SI))
        .containsExactly(
            "m", "deg", "N", "kg", "N·m", "N/m", "Pa", "m/s²", "N·m/rad", "m²", "m³", "m⁴", "N/m³",
            "");
    assertThat(symbols(UnitSystem.US))
        .containsExactly(
            "ft",
            "deg",
            "lbf",
            "lb",
            "lbf·ft",
            "lbf/ft",
            "psi",
            "ft/s²",
            "lbf·ft/rad",
            "in²",
            "in³",
            "in⁴",
            "lbf/ft³",
            "");
  }

  @Test
  void derivesTheOtherUnitsFromLengthAndForce() {
    assertThat(symbols(from("mm", "N")))
        .containsExactly(
            "mm",
            "deg",
            "N",
            "kg",
            "N·mm",
            "N/mm",
            "N/mm²",
            "m/s²",
            "N·mm/rad",
            "mm²",
            "mm³",
            "mm⁴",
            "N/mm³",
            "");
    assertThat(symbols(from("m", "kN")))
        .containsExactly(
            "m",
            "deg",
            "kN",
            "kg",
            "kN·m",
            "kN/m",
            "kPa",
            "m/s²",
            "kN·m/rad",
            "m²",
            "m³",
            "m⁴",
            "kN/m³",
            "");
    assertThat(symbols(from("in", "kip")))
        .containsExactly(
            "in",
            "deg",
            "kip",
            "lb",
            "kip·in",
            "kip/in",
            "ksi",
            "ft/s²",
            "kip·in/rad",
            "in²",
            "in³",
            "in⁴",
            "kip/in³",
            "");
    assertThat(symbols(from("yd", "tonf-US"))).contains("lb", "tonf-US·yd", "tonf-US/yd²", "yd²");
  }

  @Test
  void replacesOneUnit() {
    UnitSystem changed = UnitSystem.SI.with(Unit.parse("rad"));
    assertThat(changed.unit(Dimension.ANGLE).symbol()).isEqualTo("rad");
    assertThat(changed.with(Unit.parse("deg"))).isEqualTo(UnitSystem.SI);
    assertThat(UnitSystem.SI.unit(Dimension.ANGLE).symbol()).isEqualTo("deg");
  }

  @Test
  void writesAnswersInItsUnits() {
    assertThat(UnitSystem.US.format(66.7233242289075, Dimension.FORCE, 3)).isEqualTo("15.0 lbf");
    assertThat(UnitSystem.SI.format(Math.PI, Dimension.ANGLE, 4)).isEqualTo("180.0 deg");
    assertThatThrownBy(() -> UnitSystem.SI.format(Double.NaN, Dimension.FORCE, 3))
        .isInstanceOf(QuantityException.class);
  }

  @Test
  void needsAUnitOfItsOwnKindForEveryDimension() {
    Map<Dimension, Unit> units = new EnumMap<>(UnitSystem.SI.units());
    units.remove(Dimension.FORCE);
    assertThatThrownBy(() -> new UnitSystem(units))
        .isInstanceOf(QuantityException.class)
        .hasMessage("the system has no unit for a force: write for example N, kN, kgf or lbf");
    units.put(Dimension.FORCE, Unit.parse("kg"));
    assertThatThrownBy(() -> new UnitSystem(units))
        .hasMessage("kg is a unit of mass; a force is wanted: write kgf");
    assertThatThrownBy(() -> new UnitSystem(Map.of())).isInstanceOf(QuantityException.class);
  }

  @Test
  void itsUnitsCannotBeChangedFromOutside() {
    Map<Dimension, Unit> units = new EnumMap<>(UnitSystem.SI.units());
    UnitSystem system = new UnitSystem(units);
    units.clear();
    assertThat(system).isEqualTo(UnitSystem.SI);
    assertThatThrownBy(() -> system.units().clear())
        .isInstanceOf(UnsupportedOperationException.class);
  }

  @Test
  void derivesOnlyFromAListedLengthAndForce() {
    assertThatThrownBy(() -> from("m", "kg"))
        .hasMessage("kg is a unit of mass; a force is wanted: write kgf");
    assertThatThrownBy(() -> from("N", "N")).isInstanceOf(QuantityException.class);
    Unit ell = new Unit("ell", Dimension.LENGTH, 1.143, "from memory");
    assertThatThrownBy(() -> UnitSystem.from(ell, Unit.parse("N")))
        .hasMessage(
            "no units can be derived from ell, which is not a listed unit:"
                + " write for example m, mm, ft or in");
  }

  private static UnitSystem from(String length, String force) {
    return UnitSystem.from(Unit.parse(length), Unit.parse(force));
  }

  private static List<String> symbols(UnitSystem system) {
    return List.of(Dimension.values()).stream().map(d -> system.unit(d).symbol()).toList();
  }
}
