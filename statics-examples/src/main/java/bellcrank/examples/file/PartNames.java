package bellcrank.examples.file;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sought;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Connections, loads and sought quantities of the file, which share one name space. */
final class PartNames {

  private final Set<String> declared = new LinkedHashSet<>();
  private final Map<String, Connection> connections = new LinkedHashMap<>();
  private final Map<String, Load> loads = new LinkedHashMap<>();
  private boolean whole = true;

  /** Says that parts are missing that could not be read; unknown names are no fault then. */
  void incomplete() {
    whole = false;
  }

  /** Takes a name; a second part of that name is reported. */
  boolean declare(String name, Spot spot) {
    if (declared.add(name)) {
      return true;
    }
    spot.report(
        Excerpt.quoted(name) + " again",
        "a name that no other connection, load or sought quantity has");
    return false;
  }

  void add(Connection connection) {
    connections.put(connection.name(), connection);
  }

  void add(Load load) {
    loads.put(load.name(), load);
  }

  Set<String> names() {
    return declared;
  }

  /** Names of the given loads that could be read. */
  List<String> given() {
    return loads.keySet().stream().filter(one -> !(loads.get(one) instanceof Sought)).toList();
  }

  /** Whether a name was given to a part, read or not, or may have been. */
  boolean isDeclared(String name) {
    return !whole || declared.contains(name);
  }

  Optional<Connection> connection(String name) {
    return Optional.ofNullable(connections.get(name));
  }

  Optional<Load> load(String name) {
    return Optional.ofNullable(loads.get(name));
  }

  /** Names of the screws that could be read. */
  List<String> screws() {
    return connections.keySet().stream()
        .filter(one -> connections.get(one) instanceof Screw)
        .toList();
  }

  /** Names of the contact bases that could be read. */
  List<String> contactBases() {
    return connections.keySet().stream()
        .filter(one -> connections.get(one) instanceof ContactBase)
        .toList();
  }

  /** Names of the pins that could be read. */
  List<String> pins() {
    return connections.keySet().stream()
        .filter(one -> connections.get(one) instanceof Pin)
        .toList();
  }
}
