package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Joint;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.PlainUnknown.Push;
import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Newton's laws, read through the asks that anybody may use. */
class EquilibriumProperties {

  @Provide
  Arbitrary<Device> any() {
    return RandomDevices.medium();
  }

  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void everyBodyIsInEquilibrium(@ForAll("any") Device device) {
    Balance balance = balanced(device);
    for (String body : bodies(device)) {
      inEquilibrium(balance, Set.of(body));
    }
  }

  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void everyGroupOfBodiesIsInEquilibrium(@ForAll("any") Device device, @ForAll Random random) {
    Balance balance = balanced(device);
    for (int i = 0; i < 5; i++) {
      Set<String> group = new HashSet<>(bodies(device));
      group.removeIf(body -> random.nextInt(3) == 0);
      if (!group.isEmpty()) {
        inEquilibrium(balance, group);
      }
    }
  }

  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void actionEqualsReaction(@ForAll("any") Device device) {
    Balance balance = balanced(device);
    double close = 1e-9 * PlainStatics.of(device).forceScale();
    for (Connection connection : device.connections()) {
      Set<String> two = new HashSet<>(connection.bodies());
      if (two.size() != 2 || isLoaded(device, connection)) {
        continue;
      }
      String one = connection.bodies().get(0);
      two.remove(one);
      String other = two.iterator().next();
      for (String measure : List.of(".x", ".y")) {
        String ask = connection.name() + measure + " on ";
        opposite(balance.answer(ask + one), balance.answer(ask + other), close, ask);
      }
    }
  }

  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void whatOneGroupDoesToAnotherIsOppositeToWhatThatDoesToIt(
      @ForAll("any") Device device, @ForAll Random random) {
    Balance balance = balanced(device);
    double close = 1e-9 * PlainStatics.of(device).forceScale();
    List<String> left = new ArrayList<>();
    List<String> right = new ArrayList<>(List.of("ground"));
    for (String body : bodies(device)) {
      int choice = random.nextInt(3);
      if (choice < 2) {
        (choice == 0 ? left : right).add(body);
      }
    }
    Assume.that(!left.isEmpty());
    String a = "group(" + String.join(", ", left) + ")";
    String b = "group(" + String.join(", ", right) + ")";
    String about = " about " + device.points().keySet().iterator().next();
    for (String measure : List.of(".x", ".y", ".couple")) {
      String point = measure.equals(".couple") ? about : "";
      opposite(
          balance.answer(a + measure + point + " from " + b),
          balance.answer(b + measure + point + " from " + a),
          close * Math.max(1, device.size()),
          a + measure);
    }
  }

  private static void opposite(Answer one, Answer other, double close, String as) {
    assertThat(one.getClass()).as(as).isEqualTo(other.getClass());
    if (one instanceof Answer.Value a && other instanceof Answer.Value b) {
      assertThat(a.si()).as(as).isCloseTo(-b.si(), within(close));
    }
  }

  private static boolean isLoaded(Device device, Connection connection) {
    boolean sought = device.sought().stream().anyMatch(one -> one.body().equals(connection.name()));
    boolean given =
        PlainLoads.of(device, LoadCase.ALL_LOADS, Pose.DRAWN).stream()
            .anyMatch(push -> push.body().equals(PlainConnections.PIN + connection.name()));
    return connection instanceof Pin && (sought || given);
  }

  private static Balance balanced(Device device) {
    Balance balance = Balance.of(device);
    Assume.that(PlainStatics.of(device).isClear());
    Assume.that(!(balance.outcome() instanceof Outcome.NoBalance));
    return balance;
  }

  static List<String> bodies(Device device) {
    List<String> bodies = new ArrayList<>();
    device.members().stream().map(Member::name).forEach(bodies::add);
    device.joints().stream().map(Joint::name).forEach(bodies::add);
    return bodies;
  }

  static void inEquilibrium(Balance balance, Set<String> group) {
    Device device = balance.device();
    Set<String> inside = new HashSet<>(group);
    for (Connection connection : device.connections()) {
      // a pin all of whose bodies are inside is inside with its loads
      if (connection instanceof Pin && group.containsAll(connection.bodies())) {
        inside.add(PlainConnections.PIN + connection.name());
      }
    }
    boolean effort = false;
    double fx = 0;
    double fy = 0;
    double couple = 0;
    String about = device.points().keySet().iterator().next();
    Point centre = device.point(about);
    List<Push> pushes = new ArrayList<>(PlainLoads.of(device, balance.loadCase(), Pose.DRAWN));
    for (PlainUnknown unknown : PlainConnections.of(device, Pose.DRAWN)) {
      if (unknown.sought() && inside.contains(unknown.forces().get(0).body())) {
        Answer answer = balance.answer(unknown.ask());
        effort = true;
        if (!(answer instanceof Answer.Value value)) {
          return;
        }
        double size = value.si() / unknown.unit();
        for (Push unit : unknown.forces()) {
          pushes.add(
              new Push(
                  unit.body(),
                  unit.x(),
                  unit.y(),
                  unit.fx() * size,
                  unit.fy() * size,
                  unit.couple() * size));
        }
      }
    }
    for (Push push : pushes) {
      if (inside.contains(push.body())) {
        fx += push.fx();
        fy += push.fy();
        couple +=
            push.couple()
                + (push.x() - centre.x()) * push.fy()
                - (push.y() - centre.y()) * push.fx();
      }
    }
    String ask = "group(" + String.join(", ", group) + ")";
    double close = 1e-9 * PlainStatics.of(device).forceScale();
    sumsToZero(balance.answer(ask + ".x"), fx, close, effort, ask + ".x");
    sumsToZero(balance.answer(ask + ".y"), fy, close, effort, ask + ".y");
    if (group.stream().anyMatch(body -> device.body(body).orElseThrow() instanceof Member)) {
      sumsToZero(
          balance.answer(ask + ".couple about " + about),
          couple,
          close * Math.max(1, device.size()),
          effort,
          ask + ".couple");
    }
  }

  private static void sumsToZero(
      Answer answer, double loads, double close, boolean effort, String as) {
    if (effort && !(answer instanceof Answer.Value)) {
      return;
    }
    assertThat(answer)
        .as(as)
        .isInstanceOfSatisfying(
            Answer.Value.class,
            value -> assertThat(value.si() + loads).as(as).isCloseTo(0, within(close)));
  }
}
