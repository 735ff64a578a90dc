package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Small random devices, one for each number from a first one on, held against the plain dense
 * assembly and the singular values of another library. The numbers make the devices, so a number
 * that is told stands for its device in every later run.
 */
final class ManyDevices {

  private static final int MOST_TOLD = 20;

  private final List<String> differences = new ArrayList<>();
  private final int mostSteps;
  private int devices;
  private int compared;
  private int unclear;
  private int balanced;
  private int held;
  private int redundant;
  private int unknowns;
  private int mostUnknowns;

  private ManyDevices(int mostSteps) {
    this.mostSteps = mostSteps;
  }

  /**
   * Looks at devices.
   *
   * @param first number of the first
   * @param count how many
   * @param mostSteps up to so many steps make a device; each adds a body with what holds it, a
   *     connection, a load or a case
   */
  static ManyDevices of(long first, int count, int mostSteps) {
    ManyDevices many = new ManyDevices(mostSteps);
    for (int i = 0; i < count; i++) {
      many.look(first + i);
    }
    return many;
  }

  private void look(long number) {
    try {
      Device device = RandomDevice.of(number, mostSteps);
      devices++;
      for (LoadCase loadCase : device.cases()) {
        look(device, loadCase);
      }
    } catch (RuntimeException | AssertionError | StackOverflowError e) {
      differences.add("device " + number + ": " + e);
    }
  }

  private void look(Device device, LoadCase loadCase) {
    PlainStatics plain = PlainStatics.of(device, loadCase, Pose.DRAWN);
    if (!plain.isClear()) {
      // the two may differ, but an answer there must be
      Balance.of(device, loadCase, Pose.DRAWN).reactions();
      unclear++;
      return;
    }
    PlainStaticsProperties.compare(device, loadCase, plain);
    compared++;
    balanced += plain.isBalanced() ? 1 : 0;
    held += plain.isHeld() ? 1 : 0;
    redundant += plain.redundancy() > 0 ? 1 : 0;
    unknowns += plain.unknowns().size();
    mostUnknowns = Math.max(mostUnknowns, plain.unknowns().size());
  }

  /** What differs, with the number of the device. */
  List<String> differences() {
    return List.copyOf(differences);
  }

  /** Cases of devices that were compared in all answers. */
  int compared() {
    return compared;
  }

  /** Compared ones in balance. */
  int balanced() {
    return balanced;
  }

  /** Compared ones whose bodies are all held. */
  int held() {
    return held;
  }

  /** Compared ones with more restraints than needed. */
  int redundant() {
    return redundant;
  }

  String figures() {
    return String.format(
        Locale.ROOT,
        "%d devices, %d cases compared (%d in balance, %d held, %d redundant; %d unknowns, at most"
            + " %d in one), %d too near to a change of rank, %d differ",
        devices,
        compared,
        balanced,
        held,
        redundant,
        unknowns,
        mostUnknowns,
        unclear,
        differences.size());
  }

  /** Takes the first number, the count, and the most steps of a device. */
  public static void main(String[] args) {
    long begin = System.nanoTime();
    ManyDevices many =
        of(Long.parseLong(args[0]), Integer.parseInt(args[1]), Integer.parseInt(args[2]));
    many.differences.stream().limit(MOST_TOLD).forEach(System.out::println);
    System.out.println(many.figures());
    System.out.printf(Locale.ROOT, "%.0f s%n", (System.nanoTime() - begin) * 1e-9);
    if (!many.differences.isEmpty()) {
      throw new IllegalStateException("the two opinions differ");
    }
  }
}
