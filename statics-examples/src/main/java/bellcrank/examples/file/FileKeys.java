package bellcrank.examples.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The keys of a device file, by the kind of mapping they stand in; in the order of writing. */
final class FileKeys {

  static final Set<String> TOP =
      keys(
          "format",
          "device",
          "statement",
          "source",
          "licence",
          "basis",
          "note",
          "units",
          "gravity",
          "points",
          "members",
          "joints",
          "truss",
          "connections",
          "loads",
          "seek",
          "cases",
          "advantage",
          "ground",
          "limits",
          "drive",
          "travel",
          "curves",
          "find",
          "winches",
          "measured lines",
          "hang",
          "balance point",
          "side view",
          "sizing",
          "driving",
          "rough",
          "study",
          "search",
          "variants",
          "combinations",
          "moving loads",
          "ask",
          "expect");

  static final Set<String> UNITS =
      keys(
          "length",
          "angle",
          "force",
          "mass",
          "moment",
          "force per length",
          "pressure",
          "acceleration",
          "moment per angle",
          "area",
          "section modulus",
          "second moment",
          "force per volume");

  static final Set<String> GRAVITY = keys("size", "direction");
  static final Set<String> PLACED =
      keys("from", "toward", "distance", "fraction", "angle", "right", "up");
  static final Set<String> DIRECTION = keys("from", "toward");
  static final Set<String> MEMBER = keys("points", "bars", "weight", "outline", "count");
  static final Set<String> MEMBER_WEIGHT = keys("value", "at");
  static final Set<String> SOUGHT =
      keys("want", "direction", "member", "joint", "screw", "at", "from", "to");
  static final Set<String> CASE = keys("factors", "dynamic");
  static final Set<String> ADVANTAGE = keys("effort", "resistance");
  static final Set<String> EXPECT = keys("value", "digits", "source", "printed", "reason");

  /** Rules for what the ground bears. */
  static final Set<String> BEARINGS = keys("pressure", "soil", "drained", "undrained");

  static final Set<String> GROUND =
      keys("length", "pressure", "source", "soil", "drained", "undrained", "adhesion", "cleat");

  static final Set<String> DRAINED = keys("friction angle", "cohesion", "weight", "overburden");
  static final Set<String> UNDRAINED = keys("strength", "overburden");
  static final Set<String> CLEAT = keys("depth", "friction angle", "cohesion", "weight");

  /** A row of the friction table, in place of a number. */
  static final Set<String> FRICTION = keys("table", "take");

  static final Set<String> SIDE_VIEW =
      keys(
          "base",
          "breadth",
          "friction",
          "base offset",
          "lean",
          "slope",
          "offsets",
          "loads",
          "stays",
          "leave out");

  static final Set<String> SIDE_LOAD = keys("height", "offset", "down", "side");
  static final Set<String> SIDE_STAY = keys("height", "offset", "anchor offset", "anchor height");

  /** Kinds of connection; the first key of each names the kind. */
  static final Map<String, Set<String>> CONNECTIONS =
      kinds(
          keys("pin", "joins", "radius", "friction", "count"),
          keys("clamp", "joins", "count"),
          keys("roller", "joins", "push", "sides", "count"),
          keys("slot", "joins", "along", "sides", "count"),
          keys("guide", "joins", "along", "count"),
          keys("strut", "joins", "weight", "count"),
          keys("line", "joins", "count"),
          keys("reeving", "efficiency", "hauling", "count"),
          keys("wrap", "friction", "extra turns", "count"),
          keys("screw", "joins", "lead", "mean radius", "friction", "count"),
          keys("contact", "joins", "push", "friction", "kinetic friction", "count"),
          keys("contact base", "joins", "push", "width", "friction", "kinetic friction", "count"));

  /** Kinds of stop of a rope. */
  static final Map<String, Set<String>> STOPS =
      kinds(
          keys("end", "joins"),
          keys("drum", "joins", "radius", "turns"),
          keys("sheave", "joins", "radius", "turns"),
          keys("post", "joins", "radius", "turns"));

  /** Kinds of given load. */
  static final Map<String, Set<String>> LOADS =
      kinds(
          keys("force", "direction", "member", "joint", "at"),
          keys("couple", "member", "screw", "at"),
          keys("spread", "member", "from", "to", "direction", "per"),
          keys("weight", "member", "joint", "at"),
          keys("spring", "from", "to", "joins", "free length"),
          keys("torsion spring", "joins", "turned"));

  /** Kinds of limit. */
  static final Map<String, Set<String>> LIMITS = kinds(keys("vary"), keys("move", "from", "to"));

  /** Kinds of drive. */
  static final Map<String, Set<String>> DRIVES =
      kinds(keys("turn", "against"), keys("length"), keys("slide", "point", "along"));

  static final Set<String> TRAVEL = keys("from", "to", "steps", "meets", "look for");
  static final Set<String> MEETING = keys("point", "of", "edge", "against");

  static final Set<String> FIND = keys("unknown", "from", "to", "ask", "equals", "expect");
  static final Set<String> FOUND = keys("values", "digits", "source");

  /** Kinds of unknown. */
  static final Map<String, Set<String>> UNKNOWNS =
      kinds(
          keys("move", "along"),
          keys("place", "along", "measured from"),
          keys("turn", "about"),
          keys("mass"),
          keys("force"),
          keys("direction"),
          keys("couple"),
          keys("reach"),
          keys("depth"),
          keys("slope"),
          keys("drive"));

  /** Kinds of winch: by hand with a crank or a lever, or with a stated pull. */
  static final Map<String, Set<String>> WINCHES =
      kinds(
          keys("crank", "hauls", "drum", "gear ratio", "efficiency", "wound", "length"),
          keys("lever", "hauls", "drum", "swing", "gear ratio", "efficiency", "wound", "length"),
          keys("first layer pull", "hauls", "drum", "wound", "length"));

  static final Set<String> DRUM = keys("radius", "rope", "turns", "width", "flange");
  static final Set<String> MEASURED_LINE =
      keys("force", "span", "at", "deflection", "errors", "stiffness", "beside");
  static final Set<String> ERRORS = keys("force", "span", "at", "deflection");
  static final Set<String> HANG = keys("from", "bodies");
  static final Set<String> BALANCE_POINT = keys("line", "bodies");

  static final Set<String> SIZING =
      keys("method", "materials", "parts", "columns", "pins", "welds", "ratings", "seats", "rules");

  static final Set<String> MATERIAL =
      keys(
          "kind",
          "elasticity",
          "yield",
          "ultimate",
          "bending",
          "tension",
          "compression",
          "compression across",
          "shear",
          "source");

  static final Set<String> PART = keys("section", "material", "bars");
  static final Set<String> BAR = keys("bar", "section", "material");

  static final Set<String> SECTION =
      keys(
          "rectangle",
          "round",
          "pipe",
          "tube",
          "formed tube",
          "angle",
          "channel",
          "beam",
          "tee",
          "own",
          "stands",
          "side by side",
          "gap",
          "back to back",
          "holes",
          "notch above",
          "notch below",
          "separate");

  static final Set<String> OWN_SECTION =
      keys(
          "name",
          "area",
          "top",
          "bottom",
          "gyration",
          "second moment",
          "shear area",
          "side gyration",
          "side second moment",
          "side reach",
          "thickness",
          "least gyration",
          "least second moment",
          "top modulus",
          "bottom modulus",
          "side modulus");

  static final Set<String> HOLE = keys("diameter", "height", "offset", "from", "to");
  static final Set<String> COLUMN = keys("part", "from", "to", "in plane", "side", "curve", "ends");
  static final Set<String> PIN_JOINT = keys("diameter", "planes", "material", "gap", "plates");
  static final Set<String> PLATE =
      keys("on", "count", "thickness", "hole", "end", "width", "material");

  static final Set<String> WELD =
      keys(
          "member",
          "bar",
          "distance",
          "connection",
          "on",
          "plane",
          "leg",
          "throat",
          "box",
          "seams",
          "material",
          "thickness",
          "electrode");

  static final Set<String> RATING =
      keys("part", "table", "limit", "source", "legs", "leg angle", "reductions");

  static final Set<String> REDUCTION = keys("why", "table", "share", "source");
  static final Set<String> SEAT = keys("part", "on", "depth", "opening", "friction");
  static final Set<String> RULE = keys("factor", "meaning", "why");
  static final Set<String> DRIVING = keys("loads", "tell");

  /** Ways in which a number may differ. */
  static final Map<String, Set<String>> SPREADS =
      kinds(
          keys("within"),
          keys("plus", "minus"),
          keys("uniform"),
          keys("normal", "mean"),
          keys("triangular"));

  static final Set<String> STUDY =
      keys("asks", "samples", "seed", "exceeds", "falls below", "slips", "tips");
  static final Set<String> SEARCH =
      keys("change", "least", "greatest", "goals", "stands", "expect");
  static final Set<String> GOAL = keys("at most", "at least", "equals");
  static final Set<String> SEARCHED = keys("values", "reaches", "digits", "source");
  static final Set<String> VARIANTS = keys("compare", "changes");
  static final Set<String> COMBINATIONS = keys("groups", "asks", "over");

  /** Kinds of groups of loads. */
  static final Map<String, Set<String>> GROUPS =
      kinds(keys("unfavourable", "favourable", "loads"), keys("leading", "accompanying", "loads"));

  static final Set<String> MOVING_LOAD = keys("load", "along", "on", "case", "asks", "train");
  static final Set<String> WHEEL = keys("force", "behind");

  private FileKeys() {}

  /** All keys that some kind has. */
  static Set<String> all(Map<String, Set<String>> kinds) {
    Set<String> all = new LinkedHashSet<>(kinds.keySet());
    kinds.values().forEach(all::addAll);
    return all;
  }

  private static Set<String> keys(String... keys) {
    return Collections.unmodifiableSet(new LinkedHashSet<>(List.of(keys)));
  }

  @SafeVarargs
  private static Map<String, Set<String>> kinds(Set<String>... kinds) {
    Map<String, Set<String>> byName = new LinkedHashMap<>();
    for (Set<String> kind : kinds) {
      byName.put(kind.iterator().next(), kind);
    }
    return Collections.unmodifiableMap(byName);
  }
}
