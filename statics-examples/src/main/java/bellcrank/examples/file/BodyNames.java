package bellcrank.examples.file;

import bellcrank.statics.device.Ground;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The bodies of the file: what joins and loads may name. */
final class BodyNames {

  /** What a body is. */
  enum Kind {
    GROUND,
    MEMBER,
    JOINT
  }

  private final Map<String, Kind> kinds = new LinkedHashMap<>();
  private final Set<String> failed = new HashSet<>();
  private boolean whole = true;
  private final Map<String, String> placeOfJoint = new HashMap<>();
  private final Map<String, Set<String>> jointsAt = new HashMap<>();

  BodyNames() {
    kinds.put(Ground.NAME, Kind.GROUND);
  }

  /** Says that bodies are missing that could not be read; unknown names are no fault then. */
  void incomplete() {
    whole = false;
  }

  boolean isWhole() {
    return whole;
  }

  /** Takes a name for a body; a second body of that name is reported. */
  boolean declare(String name, Spot spot, Kind kind) {
    if (kinds.putIfAbsent(name, kind) == null) {
      return true;
    }
    spot.report(
        Excerpt.quoted(name) + " again",
        "a name that no other body has (" + Ground.NAME + " is reserved)");
    return false;
  }

  /** Says that a declared body could not be read; what names it is passed over in silence. */
  void fail(String name) {
    failed.add(name);
  }

  void placeMember(String name) {
    kinds.put(name, Kind.MEMBER);
  }

  void placeJoint(String name, String point) {
    kinds.put(name, Kind.JOINT);
    placeOfJoint.put(name, point);
    jointsAt.computeIfAbsent(point, p -> new LinkedHashSet<>()).add(name);
  }

  Set<String> names() {
    return kinds.keySet();
  }

  List<String> names(Kind kind) {
    return kinds.keySet().stream().filter(name -> kinds.get(name) == kind).toList();
  }

  boolean is(String name, Kind kind) {
    return kinds.get(name) == kind;
  }

  boolean hasFailed(String name) {
    return failed.contains(name);
  }

  /** The point of a joint; empty if there is no such joint or it could not be read. */
  Optional<String> placeOfJoint(String name) {
    return Optional.ofNullable(placeOfJoint.get(name));
  }

  /**
   * The joint meant by a point: the one that is named as the point, or the only one there. Empty if
   * there is none or it is not clear which.
   */
  Optional<String> jointAt(String point) {
    Set<String> there = jointsAt.getOrDefault(point, Set.of());
    if (there.contains(point)) {
      return Optional.of(point);
    }
    return there.size() == 1 ? there.stream().findFirst() : Optional.empty();
  }

  /** The body named at a spot; empty if there is none, which is reported, or it failed. */
  Optional<String> body(Spot spot) {
    Optional<String> name = spot.text("the name of a body");
    if (whole && name.isPresent() && !kinds.containsKey(name.get())) {
      return spot.refuse(spot.problems().name("body", name.get(), names()));
    }
    return name.filter(known -> kinds.containsKey(known) && !hasFailed(known));
  }
}
