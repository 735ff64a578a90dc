package bellcrank.statics.strength;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.BarForces;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.strength.Material.Kind;
import bellcrank.statics.strength.Material.Strength;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;

/** Published rods that are stretched, pressed or sheared, worked by devices where there is one. */
final class PublishedRods {

  private static final double G = 9.80;

  private PublishedRods() {}

  private static Sized round(double diameter, double elasticity) {
    return new Sized(Profiles.round(diameter).section(), of(elasticity));
  }

  private static Material of(double elasticity) {
    return new Material(
        "as published",
        Kind.OTHER,
        elasticity,
        OptionalDouble.empty(),
        Map.of(Strength.YIELD, 1e9),
        "the problem");
  }

  /** A bar that hangs from its top, with a load at its foot and one along it, in N and N/m. */
  private static Device hung(double length, int count, double load, double spread) {
    DeviceBuilder builder =
        Device.named("hung rod")
            .point("top", 0, 0)
            .point("foot", 0, -length)
            .member(
                new Member(
                    "rod",
                    List.of("top", "foot"),
                    List.of(new Bar("top", "foot")),
                    List.of(),
                    count))
            .clamp("top", "top", "rod", "ground")
            .force("load", "rod", "foot", Vector.of(0, -load));
    if (spread > 0) {
      builder.load(
          new SpreadLoad(
              "own weight",
              "rod",
              "top",
              "foot",
              spread,
              spread,
              Optional.of(Direction.DOWN),
              SpreadLoad.Per.LENGTH));
    }
    return builder.build();
  }

  private static BarForces bar(Device device) {
    return Balance.of(device).internalForces("rod").bars().get(0);
  }

  private static double longer(Device device, Sized sized, int count) {
    return Elongation.of(bar(device), sized, count);
  }

  private static double stress(Device device, Sized sized) {
    Sizing sizing = Sizing.of(Method.RESISTANCE).with("rod", sized.section(), sized.material());
    Checked top =
        Tried.checked(
            Checks.of(Balance.of(device), sizing), "rod", "stress at the top face of top–foot");
    return top.demand();
  }

  static Map<String, DoubleSupplier> bone() {
    double force = 62.0 * G;
    return Map.of(
        "F", () -> force,
        "dL", () -> -longer(hung(0.400, 1, -force, 0), round(0.0400, 9e9), 1));
  }

  static Map<String, DoubleSupplier> nail() {
    double perNewton = Elongation.ofShear(1, 5.00e-3, Math.PI * Math.pow(1.50e-3, 2) / 4, 8.0e10);
    return Map.of("F", () -> 1.80e-6 / perNewton, "m", () -> 1.80e-6 / perNewton / G);
  }

  static Map<String, DoubleSupplier> twoBones() {
    Device device = hung(0.350, 2, 3 * 60.0 * G, 0);
    return Map.of("dL", () -> longer(device, round(0.0360, 1.6e10), 2));
  }

  static Map<String, DoubleSupplier> pipe(double elasticity) {
    Device device = hung(6.00, 1, (100 + 3000 * 20.0) * G, 20.0 * G);
    return Map.of("dL", () -> longer(device, round(0.0500, elasticity), 1));
  }

  static Map<String, DoubleSupplier> disc() {
    double area = Math.PI * 0.0400 * 0.0400 / 4;
    return Map.of("dx", () -> Elongation.ofShear(500, 0.0300, area, 8.0e10));
  }

  /** Held at its joint, it points up at 20° to where it is pushed down. */
  static Map<String, DoubleSupplier> pencil() {
    double angle = Math.toRadians(20);
    Device device =
        Device.named("pencil")
            .point("top", 0, 0)
            .point("foot", 0.0200 * Math.cos(angle), 0.0200 * Math.sin(angle))
            .member("rod", "top", "foot")
            .clamp("top", "top", "rod", "ground")
            .force("push", "rod", "foot", Vector.of(0, -6.00))
            .build();
    Sized sized = round(6.00e-3, 1.5e10);
    double shear = Math.abs(bar(device).shear(0.01, bellcrank.statics.device.Side.AFTER));
    return Map.of(
        "dx", () -> Elongation.ofShear(shear, 0.0200, sized.section().area(), 1.0e10),
        "dL", () -> -longer(device, sized, 1));
  }

  /** The upper half of the pillar, standing: turned over it hangs and is pulled by as much. */
  static Map<String, DoubleSupplier> pillar() {
    double side = Math.sqrt(0.20);
    Sized sized = new Sized(Profiles.rectangle(side, side).section(), of(4.5e10));
    Device device =
        Device.named("pillar")
            .point("top", 0, 3.0)
            .point("foot", 0, 0)
            .member("rod", "top", "foot")
            .clamp("below", "foot", "rod", "ground")
            .force("load", "rod", "top", Vector.of(0, -10000))
            .load(
                new SpreadLoad(
                    "own weight",
                    "rod",
                    "top",
                    "foot",
                    0.20 * 2700 * G,
                    0.20 * 2700 * G,
                    Optional.of(Direction.DOWN),
                    SpreadLoad.Per.LENGTH))
            .build();
    double force = bar(device).normal(3.0, bellcrank.statics.device.Side.BEFORE);
    return Map.of(
        "stress", () -> stress(device, sized),
        "strain", () -> -Elongation.of(force, 1, 0.20, 4.5e10));
  }

  static Map<String, DoubleSupplier> platform() {
    double side = Math.sqrt(0.30e-4);
    Sized sized = new Sized(Profiles.rectangle(side, side).section(), of(2.0e11));
    Device device = hung(2.0, 1, 550 * G, 0);
    return Map.of("stress", () -> stress(device, sized), "dL", () -> longer(device, sized, 1));
  }

  static Map<String, DoubleSupplier> climber() {
    Device device = hung(35.0, 1, 65.0 * G, 0);
    return Map.of("dL", () -> longer(device, round(0.800e-2, 1.35e9), 1));
  }

  /** The stretch goes with 1/d². */
  static Map<String, DoubleSupplier> hanger() {
    double ofOneMetre = longer(hung(25.0, 1, 2.5e4 * G, 0), round(1, 2.0e11), 1);
    return Map.of("d", () -> Math.sqrt(ofOneMetre / 0.010));
  }

  static Map<String, DoubleSupplier> wire() {
    double perNewton = longer(hung(1.0, 1, 1, 0), round(1.0e-3, 1.1e11), 1);
    return Map.of("W", () -> 3.0e-3 / perNewton);
  }

  static Map<String, DoubleSupplier> tightrope() {
    double length = 15.0 / Math.cos(Math.toRadians(5.0));
    return Map.of("dL", () -> longer(hung(length, 1, 3.94e3, 0), round(0.50e-2, 2.0e11), 1));
  }
}
