package bellcrank.examples.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The schema for editors says the same as the reader. */
class DeviceFileSchemaTest {

  private static final String START = "format: 1\ndevice: lever\n";

  /** A section by its properties, all but those of its bending. */
  private static final String OWN =
      START
          + "sizing: {method: allowable, parts: {a: {section: {own: {name: a, area: 1 mm^2, top: 1 mm,"
          + " bottom: 1 mm, shear area: 1 mm^2, side gyration: 1 mm, side reach: 1 mm,"
          + " thickness: 1 mm, ";

  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(SharedFiles.text(SharedFiles.schema()));

  static Iterable<Path> devices() {
    return SharedFiles.devices();
  }

  @Test
  void thereAreFilesToCheck() {
    assertThat(SharedFiles.devices()).hasSizeGreaterThan(50);
  }

  @ParameterizedTest
  @MethodSource("devices")
  void everyDeviceFileFits(Path file) {
    assertThat(SCHEMA.validate(SharedFiles.text(file), InputFormat.YAML)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "device: lever\n",
        "format: 2\ndevice: lever\n",
        START + "devise: lever\n",
        START + "points: {A: [0]}\n",
        START + "points: {A: {from: B, distance: 3}}\n",
        START + "points: {A: {from: B, toward: C, distance: 3, fraction: 1/2}}\n",
        START + "points: {A: [zero, 0]}\n",
        START + "members: {lever: {bar: [A, B]}}\n",
        START + "connections: {hinge: {pin: A}}\n",
        START + "connections: {hinge: {pin: A, roller: A, joins: [a, b]}}\n",
        START + "connections: {hinge: {joins: [a, b]}}\n",
        START + "connections: {foot: {roller: A, joins: [a, b]}}\n",
        START + "connections: {foot: {roller: A, joins: [a, b], push: upwards}}\n",
        START + "connections: {rope: {reeving: [{sheave: A, joins: a}, {end: B, joins: b}]}}\n",
        START + "connections: {rope: {reeving: [{end: A, joins: a}, {post: B, joins: b}]}}\n",
        START + "connections: {rope: {wrap: [{end: A, joins: a}], friction: 0.3}}\n",
        START + "loads: {hand: {force: 3, member: lever, at: A}}\n",
        START + "loads: {hand: {force: [3, 4], direction: up, member: lever, at: A}}\n",
        START + "loads: {hand: {force: 3, direction: up, member: lever, joint: C}}\n",
        START + "seek: {ram: {want: couple, member: lever, joint: A}}\n",
        START + "seek: {ram: {want: mass, direction: up, member: lever, at: A}}\n",
        START + "seek: {ram: {want: intensity, member: lever, at: A}}\n",
        START + "seek: {ram: {want: mass, member: lever, at: A, to: B}}\n",
        START + "loads: {turn: {couple: 3}}\n",
        START + "loads: {turn: {couple: 3, member: lever, screw: jack}}\n",
        START + "seek: {turn: {want: couple, member: lever, screw: jack}}\n",
        START + "seek: {turn: {want: mass, member: lever, at: A, screw: jack}}\n",
        START + "loads: {turn: {couple: 3, screw: jack, at: A}}\n",
        START + "seek: {turn: {want: couple, screw: jack, at: A}}\n",
        START + "ground: {base: 100 kPa}\n",
        START + "ground: {base: {pressure: 100 kPa}}\n",
        START + "ground: {base: {length: 1, pressure: 100 kPa, soil: clay}}\n",
        START + "ground: {base: {length: 1, drained: {weight: 1, friction angle: 1}, soil: a}}\n",
        START + "ground: {base: {length: 1, soil: clay, source: a book}}\n",
        START + "ground: {base: {length: 1, drained: {weight: 18 kN/m^3}}}\n",
        START + "ground: {base: {length: 1, undrained: {overburden: 1}}}\n",
        START + "ground: {base: {length: 1, cleat: {depth: 1, friction angle: 1}}}\n",
        START + "limits: {growth: hand}\n",
        START + "limits: {growth: {vary: []}}\n",
        START + "limits: {growth: {vary: [hand, hand]}}\n",
        START + "limits: {growth: {vary: hand, from: A}}\n",
        START + "limits: {climb: {move: hand, from: A}}\n",
        START + "limits: {climb: {move: hand, vary: hand, from: A, to: B}}\n",
        START + "drive: {turn: m}\n",
        START + "travel: {from: 0, to: 1}\n",
        START + "curves: [advantage]\n",
        START + "drive: {turn: m, length: rope}\ntravel: {from: 0, to: 1}\n",
        START + "drive: {slide: m, point: A}\ntravel: {from: 0, to: 1}\n",
        START + "drive: {turn: m}\ntravel: {from: 0}\n",
        START + "drive: {turn: m}\ntravel: {from: 0, to: 1, steps: 0}\n",
        START + "drive: {turn: m}\ntravel: {from: 0, to: 1, meets: [{point: A}]}\n",
        START + "find: {a: {ask: b, equals: 1}}\n",
        START + "find: {a: {unknown: {mass: w}, from: 1, to: 2, ask: b}}\n",
        START + "find: {a: {unknown: {weight: w}, from: 1, to: 2, ask: b, equals: 1}}\n",
        START + "find: {a: {unknown: {slope: up}, from: 1, to: 2, ask: b, equals: 1}}\n",
        START + "winches: {a: {crank: 1, hauls: b}}\n",
        START + "winches: {a: {lever: 1, hauls: b, drum: {radius: 1, rope: 1, turns: 1}}}\n",
        START + "winches: {a: {crank: 1, hauls: b, drum: {radius: 1, rope: 1}}}\n",
        START + "measured lines: {a: {force: 1, span: 1}}\n",
        START + "measured lines: {a: {force: 1, span: 1, deflection: 1, errors: {sag: 1}}}\n",
        START + "hang: {a: {bodies: [lever]}}\n",
        START + "balance point: {a: {line: [A]}}\n",
        START + "drive: {turn: m}\ntravel: {from: 0, to: 1, look for: peace}\n",
        START + "side view: foot\n",
        START + "side view: {base: foot}\n",
        START + "side view: {base: foot, breadth: 1, width: 1}\n",
        START + "side view: {base: foot, breadth: 1, loads: {a: {height: 1}}}\n",
        START + "side view: {base: foot, breadth: 1, loads: {a: {side: 1}}}\n",
        START + "side view: {base: foot, breadth: 1, stays: {a: {height: 1}}}\n",
        START + "side view: {base: foot, breadth: 1, leave out: a}\n",
        START + "connections: {p: {pin: A, joins: [a, b], friction: {take: lowest}}}\n",
        START + "connections: {p: {pin: A, joins: [a, b], friction: {table: a, take: mean}}}\n",
        START + "sizing: {parts: {}}\n",
        START + "sizing: {method: plastic}\n",
        START + "sizing: {method: allowable, parts: {a: {section: {}}}}\n",
        START + "sizing: {method: allowable, parts: {a: {section: {round: 1 mm, pipe: [2, 1]}}}}\n",
        START + "sizing: {method: allowable, parts: {a: {section: {tube: [1 mm, 2 mm]}}}}\n",
        START + "sizing: {method: allowable, parts: {a: {section: {own: {name: a}}}}}\n",
        OWN + "gyration: 1 mm, second moment: 1 mm^4}}}}}\n",
        START + "sizing: {method: allowable, materials: {a: {kind: steel, elasticity: 1 GPa}}}\n",
        START + "sizing: {method: allowable, columns: [{part: a, in plane: 2}]}\n",
        START + "sizing: {method: allowable, columns: [{part: a, from: A}]}\n",
        START + "sizing: {method: allowable, pins: {a: {planes: 2}}}\n",
        START + "sizing: {method: allowable, pins: {a: {diameter: 1 mm, planes: 3}}}\n",
        START + "sizing: {method: allowable, welds: {a: {leg: 1 mm, box: [1 mm, 1 mm]}}}\n",
        START + "sizing: {method: allowable, welds: {a: {connection: a, on: b, leg: 1 mm}}}\n",
        START + "sizing: {method: allowable, ratings: {a: {limit: 1 N}}}\n",
        START + "sizing: {method: allowable, ratings: {a: {table: b, limit: 1 N, source: c}}}\n",
        START + "sizing: {method: allowable, seats: {a: {part: b, on: c}}}\n",
        START + "sizing: {method: allowable, rules: {column: {factor: 2}}}\n",
        START + "driving: {loads: a}\n",
        START + "sizing: {method: allowable}\ndriving: {tell: [a]}\n",
        START + "rough: {gravity: {within: 1 m/s^2}}\n",
        START + "study: {asks: [outcome]}\n",
        START + "rough: {}\nstudy: {asks: [a]}\n",
        START + "rough: {gravity: {within: 10 %, normal: 1}}\nstudy: {asks: [a]}\n",
        START + "rough: {gravity: {uniform: [1]}}\nstudy: {asks: [a]}\n",
        START + "rough: {gravity: {within: 10 %}}\nstudy: {samples: 9}\n",
        START + "rough: {gravity: {within: 10 %}}\nstudy: {asks: [a], samples: 0}\n",
        START + "search: {a: {least: b}}\n",
        START + "search: {a: {change: {gravity: 3}, least: b}}\n",
        START + "search: {a: {change: {gravity: [3, 4]}}}\n",
        START + "search: {a: {change: {gravity: [3, 4]}, least: b, greatest: b}}\n",
        START + "search: {a: {change: {gravity: [3, 4]}, goals: {b: {}}}}\n",
        START + "search: {a: {change: {gravity: [3, 4]}, stands: maybe}}\n",
        START + "search: {a: {change: {gravity: [3, 4]}, least: b, expect: {digits: 3}}}\n",
        START + "variants: {compare: {a: best}, changes: {b: {gravity: 3}}}\n",
        START + "variants: {compare: {a: less}}\n",
        START + "combinations: {groups: {a: {leading: 1.5}}, asks: [b]}\n",
        START + "combinations: {groups: {a: {leading: 1.5, loads: b}}}\n",
        START + "combinations: {groups: {a: {leading: 1, loads: b}}, asks: [b], over: sea}\n",
        START + "moving loads: {a: {load: b, along: [A], asks: [c]}}\n",
        START + "moving loads: {a: {load: b, along: [A, B]}}\n",
        START + "moving loads: {a: {load: b, along: [A, B], asks: [c], train: [{behind: 1}]}}\n",
        START + "expect: {ram: {value: 3, digits: 16}}\n",
        START + "expect: {ram: 3}\n"
      })
  void wrongFilesDoNotFit(String text) {
    assertThat(SCHEMA.validate(text, InputFormat.YAML)).isNotEmpty();
    assertThat(DeviceFileReader.read(text, "wrong.yaml")).isInstanceOf(ReadResult.Refused.class);
  }

  @Test
  void itHasTheKeysOfTheReader() {
    assertThat(properties(schema())).isEqualTo(FileKeys.TOP);
    Map<String, Fields> definitions = definitions();
    mappings()
        .forEach(
            (name, keys) -> {
              assertThat(definitions).containsKey(name);
              assertThat(properties(definitions.getOrDefault(name, schema())))
                  .as(name)
                  .isEqualTo(keys);
            });
  }

  @Test
  void itLeavesNoMappingOpen() {
    Set<String> known = mappings().keySet();
    definitions()
        .forEach(
            (name, definition) -> {
              if (definition.has("properties")) {
                assertThat(known).contains(name);
                assertThat(definition.find("additionalProperties").flatMap(Spot::textIfAny))
                    .as(name)
                    .hasValue("false");
              }
            });
  }

  /** The schema, which is JSON and so YAML. */
  private static Fields schema() {
    Problems problems = new Problems("schema");
    Node root = YamlTree.of(SharedFiles.text(SharedFiles.schema()), problems).orElseThrow();
    return new Spot(root, Fields.TOP, problems).fields("a mapping").orElseThrow();
  }

  private static Map<String, Fields> definitions() {
    Map<String, Fields> definitions = new LinkedHashMap<>();
    for (Named named : fields(schema(), "$defs").named()) {
      definitions.put(named.text(), named.value().fields("a mapping").orElseThrow());
    }
    return definitions;
  }

  private static Fields fields(Fields in, String key) {
    return in.find(key).flatMap(spot -> spot.fields("a mapping")).orElseThrow();
  }

  private static Map<String, Set<String>> mappings() {
    Map<String, Set<String>> mappings = new LinkedHashMap<>();
    mappings.put("units", FileKeys.UNITS);
    mappings.put("gravity", FileKeys.GRAVITY);
    mappings.put("placed-point", FileKeys.PLACED);
    mappings.put("direction-toward", FileKeys.DIRECTION);
    mappings.put("member", FileKeys.MEMBER);
    mappings.put("member-weight", FileKeys.MEMBER_WEIGHT);
    mappings.put("sought", FileKeys.SOUGHT);
    mappings.put("case", FileKeys.CASE);
    mappings.put("advantage", FileKeys.ADVANTAGE);
    mappings.put("expected", FileKeys.EXPECT);
    mappings.put("ground", FileKeys.GROUND);
    mappings.put("drained", FileKeys.DRAINED);
    mappings.put("undrained", FileKeys.UNDRAINED);
    mappings.put("cleat", FileKeys.CLEAT);
    mappings.put("friction-table", FileKeys.FRICTION);
    mappings.put("side-view", FileKeys.SIDE_VIEW);
    mappings.put("side-load", FileKeys.SIDE_LOAD);
    mappings.put("side-stay", FileKeys.SIDE_STAY);
    mappings.put("sizing", FileKeys.SIZING);
    mappings.put("material", FileKeys.MATERIAL);
    mappings.put("sized-part", FileKeys.PART);
    mappings.put("sized-bar", FileKeys.BAR);
    mappings.put("section", FileKeys.SECTION);
    mappings.put("own-section", FileKeys.OWN_SECTION);
    mappings.put("hole", FileKeys.HOLE);
    mappings.put("column", FileKeys.COLUMN);
    mappings.put("pin-joint", FileKeys.PIN_JOINT);
    mappings.put("plate", FileKeys.PLATE);
    mappings.put("weld", FileKeys.WELD);
    mappings.put("rating", FileKeys.RATING);
    mappings.put("reduction", FileKeys.REDUCTION);
    mappings.put("seat", FileKeys.SEAT);
    mappings.put("rule", FileKeys.RULE);
    mappings.put("driving", FileKeys.DRIVING);
    addKinds(mappings, "connection-", FileKeys.CONNECTIONS);
    addKinds(mappings, "stop-", FileKeys.STOPS);
    addKinds(mappings, "load-", FileKeys.LOADS);
    addKinds(mappings, "limit-", FileKeys.LIMITS);
    addKinds(mappings, "drive-", FileKeys.DRIVES);
    mappings.put("travel", FileKeys.TRAVEL);
    mappings.put("meeting", FileKeys.MEETING);
    mappings.put("find", FileKeys.FIND);
    mappings.put("found", FileKeys.FOUND);
    addKinds(mappings, "unknown-", FileKeys.UNKNOWNS);
    addKinds(mappings, "winch-", FileKeys.WINCHES);
    mappings.put("drum", FileKeys.DRUM);
    mappings.put("measured-line", FileKeys.MEASURED_LINE);
    mappings.put("errors", FileKeys.ERRORS);
    mappings.put("hang", FileKeys.HANG);
    mappings.put("balance-point", FileKeys.BALANCE_POINT);
    addKinds(mappings, "spread-", FileKeys.SPREADS);
    mappings.put("study", FileKeys.STUDY);
    mappings.put("search", FileKeys.SEARCH);
    mappings.put("goal", FileKeys.GOAL);
    mappings.put("searched", FileKeys.SEARCHED);
    mappings.put("variants", FileKeys.VARIANTS);
    mappings.put("combinations", FileKeys.COMBINATIONS);
    addKinds(mappings, "group-", FileKeys.GROUPS);
    mappings.put("moving-load", FileKeys.MOVING_LOAD);
    mappings.put("wheel", FileKeys.WHEEL);
    return mappings;
  }

  private static void addKinds(
      Map<String, Set<String>> mappings, String prefix, Map<String, Set<String>> kinds) {
    kinds.forEach((kind, keys) -> mappings.put(prefix + kind.replace(' ', '-'), keys));
  }

  private static Set<String> properties(Fields definition) {
    Set<String> names = new HashSet<>();
    fields(definition, "properties").named().forEach(named -> names.add(named.text()));
    return names;
  }
}
