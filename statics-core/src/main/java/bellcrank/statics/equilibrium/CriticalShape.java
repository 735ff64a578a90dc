package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pin;
import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Says what is special about a shape that leaves a motion free in spite of enough restraints. */
final class CriticalShape {

  private final Device device;
  private final FreedomWriter writer;

  CriticalShape(Device device, FreedomWriter writer) {
    this.device = device;
    this.writer = writer;
  }

  String words(List<BodyMotion> motions) {
    List<String> inLine = pinsInLine(motions);
    if (!inLine.isEmpty()) {
      return and(inLine) + " lie in one straight line";
    }
    BodyMotion first = motions.get(0);
    List<String> holding = new ArrayList<>();
    for (Connection connection : device.connections()) {
      if (connection.bodies().contains(first.body())) {
        holding.add(connection.name());
      }
    }
    String names = and(holding);
    return first
        .centre()
        .map(centre -> "the lines of " + names + " all pass through " + writer.place(centre))
        .orElse("the lines of " + names + " are all parallel");
  }

  private static String and(List<String> names) {
    int last = names.size() - 1;
    return last < 1
        ? String.join("", names)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }

  /** Names of three or more pins or joints of the moving bodies on one line; empty if none. */
  private List<String> pinsInLine(List<BodyMotion> motions) {
    if (motions.size() < 2) {
      return List.of();
    }
    List<String> names = new ArrayList<>();
    List<Point> places = new ArrayList<>();
    for (Connection connection : device.connections()) {
      boolean moving =
          motions.stream().anyMatch(motion -> connection.bodies().contains(motion.body()));
      if (!moving) {
        continue;
      }
      int count = connection instanceof Pin ? 1 : connection.places().size();
      for (int i = 0; i < count; i++) {
        String at = connection.places().get(i);
        if (!names.contains(at)) {
          names.add(at);
          places.add(device.point(at));
        }
      }
    }
    double near = 1e-9 * device.size() * device.size();
    for (int i = 0; i < names.size(); i++) {
      for (int j = i + 1; j < names.size(); j++) {
        List<String> line = new ArrayList<>(List.of(names.get(i), names.get(j)));
        for (int k = j + 1; k < names.size(); k++) {
          double area = places.get(i).to(places.get(j)).cross(places.get(i).to(places.get(k)));
          if (Math.abs(area) <= near) {
            line.add(names.get(k));
          }
        }
        if (line.size() >= 3) {
          return line;
        }
      }
    }
    return List.of();
  }
}
