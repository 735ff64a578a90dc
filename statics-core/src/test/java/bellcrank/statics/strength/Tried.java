package bellcrank.statics.strength;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.strength.CheckResult.NotChecked;
import bellcrank.statics.strength.Material.Kind;
import bellcrank.statics.strength.Material.Strength;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Devices, materials and readings that several tests of checks share. */
final class Tried {

  static final double MM = 1e-3;
  static final double MPA = 1e6;
  static final double KN = 1e3;

  /** Round numbers of our own, near those of structural steel. */
  static final Material STEEL =
      steel("mild steel", Map.of(Strength.YIELD, 235 * MPA, Strength.ULTIMATE, 360 * MPA));

  /** Characteristic strengths of C24. */
  static final Material SOFTWOOD =
      new Material(
          "softwood",
          Kind.TIMBER,
          11e9,
          OptionalDouble.of(420),
          Map.of(
              Strength.BENDING, 24 * MPA,
              Strength.TENSION, 14 * MPA,
              Strength.COMPRESSION, 21 * MPA,
              Strength.SHEAR, 4 * MPA),
          "EN 338 (2009), from memory");

  /** 20 mm wide, 40 mm high: A = 800 mm², S = 5333 mm³, I = 106 667 mm⁴. */
  static final Section BAR = Profiles.rectangle(20 * MM, 40 * MM).section();

  private Tried() {}

  static Material steel(String name, Map<Strength, Double> strengths) {
    return new Material(name, Kind.STEEL, 210e9, OptionalDouble.of(7850), strengths, "ours");
  }

  /** An arm of 1 m, held at its foot, that is pulled by 2 kN and pressed down by 500 N. */
  static DeviceBuilder arm() {
    return Device.named("arm")
        .point("foot", 0, 0)
        .point("tip", 1, 0)
        .member("arm", "foot", "tip")
        .clamp("wall", "foot", "arm", "ground")
        .force("load", "arm", "tip", Vector.of(2000, -500));
  }

  /** A prop of 1.5 m upright under a level lever: it is pressed by the load. */
  static DeviceBuilder prop(double load) {
    return Device.named("propped lever")
        .point("hinge", 0, 1.5)
        .point("end", 1, 1.5)
        .point("floor", 1, 0)
        .member("lever", "hinge", "end")
        .pin("hinge", "hinge", "lever", "ground")
        .strut("prop", new End("lever", "end"), new End("ground", "floor"))
        .load(new bellcrank.statics.device.Force("barrel", "lever", "end", Vector.of(0, -load)));
  }

  /** A lever of 1 m on a pin, pulled by 6 kN straight away from it, and held level by a roller. */
  static DeviceBuilder link(double pull) {
    return Device.named("link")
        .point("eye", 0, 0)
        .point("end", 1, 0)
        .member("link", "eye", "end")
        .pin("bolt", "eye", "link", "ground")
        .roller("rest", "end", "link", "ground", Direction.UP)
        .force("pull", "link", "end", Vector.of(pull, 0));
  }

  static Checked checked(Checks checks, String part, String what) {
    List<Checked> found =
        checks.checked().stream()
            .filter(one -> one.part().equals(part) && one.what().equals(what))
            .toList();
    assertThat(found).as(what + " of " + part + " in " + names(checks)).hasSize(1);
    return found.get(0);
  }

  static String whyNot(Checks checks, String part, String what) {
    List<NotChecked> found =
        checks.notChecked().stream()
            .filter(one -> one.part().equals(part) && one.what().equals(what))
            .toList();
    assertThat(found).as(what + " of " + part + " in " + names(checks)).hasSize(1);
    return found.get(0).why();
  }

  private static String names(Checks checks) {
    return Stream.<CheckResult>concat(checks.checked().stream(), checks.notChecked().stream())
        .map(one -> one.part() + ": " + one.what())
        .toList()
        .toString();
  }
}
