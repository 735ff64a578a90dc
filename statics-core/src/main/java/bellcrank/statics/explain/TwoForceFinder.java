package bellcrank.statics.explain;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Sought;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Finds the members that carry forces at two smooth pins only. */
final class TwoForceFinder {

  /**
   * One end of such a member.
   *
   * @param pin name of the pin
   * @param asks components of the pin that the member's force gives
   * @param onMember whether these components act on the member, not on what it is pinned to
   */
  record BarEnd(String pin, List<Ask> asks, boolean onMember) {}

  /** A two-force member with the bodies that it is pinned to and the places of its pins. */
  record Bar(
      String member,
      BarEnd first,
      BarEnd second,
      int firstOther,
      int secondOther,
      Point a,
      Point b) {

    boolean at(String pin) {
      return first.pin().equals(pin) || second.pin().equals(pin);
    }

    Vector pull() {
      return a.to(b).times(1 / a.distance(b));
    }
  }

  private final Device device;
  private final Bodies bodies;
  private final Set<String> taken = new HashSet<>();

  private TwoForceFinder(Device device, Bodies bodies) {
    this.device = device;
    this.bodies = bodies;
  }

  static List<Bar> find(Device device, Bodies bodies, List<KnownLoad> loads) {
    TwoForceFinder finder = new TwoForceFinder(device, bodies);
    Set<Integer> loaded = new HashSet<>();
    for (KnownLoad load : loads) {
      loaded.add(load.link().body());
      loaded.add(load.link().other());
    }
    for (Sought sought : device.sought()) {
      loaded.add(bodies.underLoad(sought.body()));
    }
    List<Bar> bars = new ArrayList<>();
    device.members().stream()
        .map(Member::name)
        .sorted(Comparator.naturalOrder())
        .filter(member -> !loaded.contains(bodies.number(member)))
        .forEach(member -> finder.add(member, bars));
    return List.copyOf(bars);
  }

  private void add(String member, List<Bar> bars) {
    List<Pin> pins = new ArrayList<>();
    for (Connection connection : device.connections()) {
      if (connection.bodies().contains(member)) {
        if (!(connection instanceof Pin pin && pin.friction() == 0)) {
          return;
        }
        pins.add(pin);
      }
    }
    if (pins.size() != 2) {
      return;
    }
    pins.sort(Comparator.comparing(Pin::name));
    Pin one = pins.get(0);
    Pin two = pins.get(1);
    Point a = bodies.place(member, one.at());
    Point b = bodies.place(member, two.at());
    String firstOther = other(one, member);
    String secondOther = other(two, member);
    boolean chained = taken.contains(firstOther) || taken.contains(secondOther);
    if (a.distance(b) > 0 && !chained) {
      taken.add(member);
      bars.add(
          new Bar(
              member,
              end(one, member),
              end(two, member),
              bodies.number(firstOther),
              bodies.number(secondOther),
              a,
              b));
    }
  }

  private String other(Pin pin, String member) {
    if (bodies.isBody(pin)) {
      return Bodies.pinName(pin.name());
    }
    return pin.bodies().get(pin.bodies().get(0).equals(member) ? 1 : 0);
  }

  private BarEnd end(Pin pin, String member) {
    List<Ask> asks = bodies.asks(pin.name());
    if (!bodies.isBody(pin)) {
      return new BarEnd(pin.name(), asks, pin.bodies().get(0).equals(member));
    }
    int first = 2 * pin.bodies().indexOf(member);
    return new BarEnd(pin.name(), asks.subList(first, first + 2), true);
  }

  /** Whether an ask is that of a component to the right. */
  static boolean isX(Ask ask) {
    return ask.measure() == Measure.X;
  }
}
