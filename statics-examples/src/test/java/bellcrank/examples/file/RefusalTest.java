package bellcrank.examples.file;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.ground.Cleat;
import bellcrank.statics.ground.Drained;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.limits.Variation;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is refused, where, and in which words. */
class RefusalTest {

  private static final String BEGIN =
      """
      format: 1
      device: x
      points: {A: [0, 0], B: [1, 0], C: [0, 1], A again: [0, 0]}
      members: {m: [A, B], k: [A, C]}
      joints: [C]
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      quoteCharacter = '´',
      value = {
        "a: [1, 2¦1:9: file: found a list without its end; wanted: a comma or ]",
        "a: {b: 1¦1:9: file: found a mapping without its end; wanted: a comma or }",
        "a: b: c¦1:5: file: found a colon in an unexpected place; wanted: each key on a line of its"
            + " own, and quotes round a text that holds \": \"",
        "a: \"b¦1:6: file: found the end of the file; wanted: the closing quote",
        "a: @b¦1:4: file: found a sign that cannot begin a value; wanted: a value; a text that"
            + " begins with @, ` or % is put in quotes",
        "\"\\q\": 1¦1:3: file: found an unknown sign behind \\; wanted: \\\\ for a backslash in"
            + " quotes",
        "? [a]: b¦1:3: file: found a list, mapping or alias as a key; wanted: a name as a key",
        "{*a : b}¦1:4: file: found a list, mapping or alias as a key; wanted: a name as a key",
        "a: |x¦1:5: file: found a | or > with more behind it; wanted: the text on the lines below",
        "[a]]¦1:4: file: found more text behind the document; wanted: one mapping in a file",
        "format¦1:1: file: found \"format\"; wanted: a mapping that begins with format: 1",
        "[a, {b: c}]¦1:1: file: found [a, {b: c}]; wanted: a mapping that begins with format: 1"
      })
  void brokenYamlIsToldInOurWords(String text, String problem) {
    assertThat(Reads.problems(text)).containsExactly(problem);
  }

  @Test
  void tabsAndIndentationAreTold() {
    String blanks = ": file: found a tab; wanted: blanks, not tabs, for indentation";
    assertThat(Reads.problems("a:\n\t- b")).containsExactly("2:1" + blanks);
    assertThat(Reads.problems("a:\n\tb: c")).containsExactly("2:1" + blanks);
    assertThat(Reads.problems("a:\n \tb: [c, d]\ne: f")).containsExactly("2:2" + blanks);
    assertThat(Reads.problems("a: \tb"))
        .containsExactly(
            "1:4: file: found a tab; wanted: a blank in its place: a tab can stand inside quotes"
                + " only");
    assertThat(Reads.problems("a:\n  b: 1\n    c: 2"))
        .containsExactly(
            "3:6: file: found a key further in than the line above it; wanted: the indentation of"
                + " the keys beside it");
    assertThat(Reads.problems("a:\n  b: 1\n c: 2"))
        .containsExactly(
            "3:2: file: found a line that does not fit; wanted: the same indentation as the keys"
                + " or items that go with it");
  }

  /** The parser complains of the line after; what is missing is told where it is missing. */
  @Test
  void aKeyWithoutItsColonOrItsBlankIsTold() {
    String colon =
        ": file: found a key without a colon; wanted: a colon and a blank behind the key, as in"
            + " a: [0, 1]";
    assertThat(Reads.problems("points {a: [0, 0]}\nb: c")).containsExactly("1:8" + colon);
    assertThat(Reads.problems("p:\n  a [0, 0]\n  b: [1, 0]")).containsExactly("2:5" + colon);
    assertThat(Reads.problems("p:\n  a: [0, 0]\n  b [1, 0]\nc: d")).containsExactly("3:5" + colon);
    String blank =
        ": file: found a colon without a blank; wanted: a blank behind the colon of a key, as in"
            + " a: [0, 1]";
    assertThat(Reads.problems("p:\n  a:[0, 0]\n  b: [1, 0]")).containsExactly("2:5" + blank);
    assertThat(Reads.problems("p:{a: [0, 0]}\nb: c")).containsExactly("1:3" + blank);
    assertThat(Reads.problems(BEGIN.replace("members: {m: ", "members: {m: {weight:2 kg, bars: ")))
        .isNotEmpty();
    assertThat(Reads.problems("p: {a: [0, 0]\nb: {c: d}\n"))
        .containsExactly(
            "2:1: file: found a mapping without its end, begun in line 1; wanted: a comma or }");
  }

  @Test
  void anchorsAliasesTagsAndSecondDocumentsAreRefused() {
    String plain = BEGIN + "note: hello\n";
    assertThat(Reads.problems(plain)).isEmpty();
    String wanted = "; wanted: the value itself; a text that begins so is put in quotes";
    assertThat(Reads.problems(plain.replace("hello", "&a hello")))
        .containsExactly("6:7: file: found an anchor (&)" + wanted);
    assertThat(Reads.problems(plain.replace("hello", "*a")))
        .containsExactly("6:7: file: found an alias (*)" + wanted);
    assertThat(Reads.problems(plain.replace("hello", "!!str hello")))
        .containsExactly("6:7: file: found a tag (!)" + wanted);
    assertThat(Reads.problems("!!str " + plain))
        .containsExactly("1:1: file: found a tag (!)" + wanted);
    assertThat(Reads.problems(plain + "---\nformat: 1\n"))
        .containsExactly("8:1: file: found a second document; wanted: one document in a file");
    assertThat(Reads.problems(plain + "loads:\n  f: {couple: 1, member: m}\n  f: {}\n"))
        .containsExactly(
            "9:3: loads → f: found the key \"f\" again; wanted: each key once; it stands in line 8"
                + " already");
    assertThat(Reads.problems(plain + "note: again\n"))
        .containsExactly(
            "7:1: note: found the key \"note\" again; wanted: each key once; it stands in line 6"
                + " already");
  }

  @Test
  void whatIsNoTextIsRefusedWithItsPlace() {
    assertThat(Reads.problems("a: 1\nb: \u0000"))
        .containsExactly(
            "2:4: file: found the character U+0000; wanted: a text without control characters");
    assertThat(Reads.problems("a: \uD800"))
        .containsExactly(
            "1:4: file: found the character U+D800; wanted: a text without control characters");
    byte[] latin = "a: 1\r\nb: é".getBytes(StandardCharsets.ISO_8859_1);
    assertThat(Reads.sentences(DeviceFileReader.read(latin, "f")))
        .containsExactly("f:2:4: file: found the byte 0xe9; wanted: a text in UTF-8");
    byte[] cut = "a: é".getBytes(StandardCharsets.UTF_8);
    assertThat(Reads.sentences(DeviceFileReader.read(Arrays.copyOf(cut, cut.length - 1), "f")))
        .hasSize(1);
    assertThat(Reads.sentences(DeviceFileReader.read(new byte[FileText.LARGEST + 1], "f")))
        .containsExactly(
            "f:1:1: file: found more than 1048576 bytes; wanted: a file of 1 MiB at most");
  }

  @Test
  void depthAndSizeAreBounded() {
    assertThat(Reads.problems("[".repeat(100)))
        .containsExactly(
            "1:31: file: found more than 30 levels; wanted: fewer levels within one another");
    assertThat(Reads.problems("[" + "a,".repeat(20_000) + "]"))
        .containsExactly("1:40000: file: found more than 20000 values; wanted: a smaller file");
    assertThat(Reads.problems(""))
        .containsExactly("1:1: file: found nothing; wanted: a mapping that begins with format: 1");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      quoteCharacter = '´',
      value = {
        "format: 2¦format: found \"2\"; wanted: 1, the only format there is",
        "units: metric¦units: found \"metric\"; wanted: si, us or units such as {length: m, force:"
            + " kN}",
        "units: {length: N}¦units → length: found \"N\"; wanted: a unit of length (N is a unit of"
            + " force; a length is wanted: write for example m, mm, ft or in)",
        "units: {length: m·m/m}¦",
        "gravity: -9.81¦gravity: found \"-9.81\"; wanted: a size of 0 or more; its sense goes into"
            + " direction",
        "gravity: {direction: up}¦gravity: found no key size; wanted: the size of gravity",
        "gravity: {size: 1, direction: {toward: A}}¦gravity → direction: found no key from;"
            + " wanted: from and toward: there is no place of its own here",
        "note: ''¦note: found nothing; wanted: a text",
        "note: \"a\\u0001b\"¦note: found \"a�b\"; wanted: a text without control characters",
        "joints: 5¦joints: found \"5\"; wanted: a list of points such as [A, B], or names with"
            + " places such as {ring: A}",
        "truss: [[A, B, C]]¦truss: found [A, B, C]; wanted: the two points of a bar, such as [A, B]",
        "truss: [[A, A]]¦truss: found [A, A]; wanted: two different points",
        "loads: {f: {couple: 3, force: 3}}¦loads → f: found couple and force; wanted: one kind of"
            + " load at a time",
        "loads: {f: {member: m}}¦loads → f: found no kind of load; wanted: one of the keys force,"
            + " couple, spread, weight, spring, torsion spring",
        "loads: {f: 3}¦loads → f: found \"3\"; wanted: a load, such as {force: 220 N, direction:"
            + " down, member: lever, at: grip}",
        "loads: {f: {couple: 3, member: C}}¦loads → f → member: found \"C\"; wanted: the name of a"
            + " member; for a joint write joint: C",
        "loads: {f: {force: 3, direction: up, joint: m}}¦loads → f → joint: found \"m\"; wanted:"
            + " the name of a joint or pin: C",
        "loads: {f: {force: 3, direction: up, joint: C, member: m}}¦loads → f → joint: found member"
            + " and joint; wanted: one of them",
        "loads: {f: {force: 3, direction: up, member: m}}¦loads → f: found no key at; wanted: the"
            + " name of a point, or coordinates such as [0.5, 2]",
        "loads: {f: {force: [1, 2], direction: up, joint: C}}¦loads → f → direction: found \"up\";"
            + " wanted: no direction, since the force has components",
        "loads: {f: {force: 1, direction: [0, 0], joint: C}}¦loads → f → direction: found [0, 0];"
            + " wanted: components that are not both 0 and not too large",
        "loads: {f: {spread: [1, 2, 3], member: m, from: A, to: B}}¦loads → f → spread: found [1,"
            + " 2, 3]; wanted: two values such as [0, 10 kN/m]: two numbers, a point as"
            + " decimal sign, one comma between them",
        "loads: {f: {spread: 1, member: m, from: A, to: A}}¦loads → f → to: found \"A\"; wanted:"
            + " another point than the start",
        "seek: {s: {want: couple, member: m, joint: C}}¦seek → s → joint: found the key joint;"
            + " wanted: member: a joint takes no couple",
        "seek: {s: {want: mass, direction: up, joint: C}}¦seek → s → direction: found the key"
            + " direction; wanted: a direction only for want: force",
        "seek: {s: {want: mass, member: m, at: A, to: B}}¦seek → s → to: found the key to; wanted:"
            + " from and to only for want: intensity",
        "seek: {s: {want: intensity, member: m, from: A}}¦seek → s: found no key to; wanted: the"
            + " name of a point, or coordinates such as [0.5, 2]",
        "connections: {c: {strut: [A, B]}}¦connections → c: found no key joins; wanted: the two"
            + " bodies, since not both places are those of joints",
        "connections: {c: {pin: A, joins: [m]}}¦connections → c → joins: found [m]; wanted: the"
            + " names of two bodies or more, such as [lever, ground]",
        "connections: {c: {pin: A, joins: [m, m]}}¦connections → c → joins: found joins [m, m];"
            + " wanted: names that differ",
        "connections: {c: {clamp: A, joins: [m, k, ground]}}¦connections → c → joins: found [m, k,"
            + " ground]; wanted: the names of two bodies, such as [lever, ground]",
        "connections: {c: {roller: A, joins: [m, k], push: up, sides: both}}¦connections → c → sides:"
            + " found \"both\"; wanted: one or two",
        "connections: {c: {clamp: A, joins: [m, k], count: 0}}¦connections → c → count: found"
            + " \"0\"; wanted: a whole number of 1 or more",
        "connections: {c: {line: [A], joins: [m, k]}}¦connections → c → line: found [A]; wanted:"
            + " two places, such as [A, B]",
        "connections: {c: {wrap: [{end: A, joins: m}], friction: 1}}¦connections → c → wrap: found"
            + " [{end: A, joins: m}]; wanted: three stops: an end, a post and an end",
        "connections: {c: {reeving: [{end: A, joins: m}, {drum: B, joins: k, turns: clockwise}]}}¦"
            + "connections → c → reeving: found no key radius; wanted: a length",
        "connections: {c: {roller: A, joins: [m, k], push: {toward: A again}}}¦connections → c →"
            + " push: found two points at the same place; wanted: two points apart",
        "cases: {c: {factors: {x: 2}}}¦cases → c → factors → x: found \"x\"; wanted: the name of a"
            + " load (there is none)",
        "loads: {f: {couple: 3}}¦loads → f: found no key member; wanted: the member, or the screw, it"
            + " turns",
        "loads: {f: {couple: 3, member: m, screw: jack}}¦loads → f → screw: found member and screw;"
            + " wanted: one of them",
        "loads: {f: {couple: 3, screw: jack}}¦loads → f → screw: found \"jack\"; wanted: the name of"
            + " a screw (there is none)",
        "seek: {s: {want: mass, member: m, at: A, screw: jack}}¦seek → s → screw: found the key"
            + " screw; wanted: screw only for want: couple",
        "limits: {l: 3}¦limits → l: found \"3\"; wanted: a limit, such as {vary: winch} or {move:"
            + " climber, from: A, to: B}",
        "limits: {l: {from: A}}¦limits → l: found no kind of limit; wanted: one of the keys vary,"
            + " move",
        "limits: {l: {vary: []}}¦limits → l → vary: found []; wanted: the name of a load, several"
            + " such as [winch, hand], or all (but weights)",
        "limits: {l: {vary: {}}}¦limits → l → vary: found {}; wanted: the name of a load, several"
            + " such as [winch, hand], or all (but weights)",
        "limits: {l: {vary: hand}}¦limits → l → vary: found \"hand\"; wanted: the name of a load"
            + " (there is none)",
        "limits: {l: {vary: all}}¦limits → l → vary: found \"multiple\"; wanted: a device with a"
            + " given load that is no weight, or multiple(LOAD)",
        "limits: {l: {vary: hand, move: hand}}¦limits → l: found vary and move; wanted: one kind of"
            + " limit at a time",
        "ask: [greatest outcome]¦ask: found \"outcome\" in \"greatest outcome\"; wanted: an ask for a"
            + " number that may differ from state to state, or multiple, multiple(LOAD) or"
            + " distance(LOAD) along A–B",
        "ask: [greatest multiple(hand)]¦ask: found \"hand\" in \"greatest multiple(hand)\"; wanted:"
            + " the name of a given load (there is none)",
        "expect: {verdict: {value: holds, digits: 3}}¦expect → verdict → digits: found the key"
            + " digits; wanted: no digits, since the answer is words",
        "expect: {friction factor: {value: 0.3}}¦expect → friction factor: found no key digits;"
            + " wanted: the number of significant digits",
        "ask: [m.moment about B]¦ask: found \"moment\" in \"m.moment about B\"; wanted: a place on a bar"
            + " of the member: at LENGTH of A–B",
        "expect: {outcome: {value: a, digits: 3}}¦expect → outcome → digits: found the key digits;"
            + " wanted: no digits, since the answer is words",
        "expect: {freedoms: {value: 1}}¦expect → freedoms: found no key digits; wanted: the number"
            + " of significant digits"
      })
  void aWrongValueIsToldWithWhatIsWanted(String line, String problem) {
    String key = line.substring(0, line.indexOf(':') + 1);
    String text =
        BEGIN.lines().anyMatch(one -> one.startsWith(key))
            ? BEGIN
                .lines()
                .map(one -> one.startsWith(key) ? line : one)
                .collect(Collectors.joining("\n"))
            : BEGIN + line + "\n";
    if (problem == null) {
      assertThat(Reads.problems(text)).isEmpty();
    } else {
      assertThat(Reads.problems(text)).hasSize(1).first().asString().endsWith(": " + problem);
    }
  }

  @Test
  void commasInsideNumbersAreHintedAt() {
    assertThat(Reads.problems(BEGIN + "loads: {f: {couple: 1,220, member: m}}\n"))
        .containsExactly(
            "6:23: loads → f → 220: found the key \"220\"; wanted: a known key; if this belongs to"
                + " a number, a point as decimal sign and nothing between thousands, as in 1220.5");
    String hint =
        "; wanted: coordinates such as [0.5, 2]: two numbers, a point as decimal sign, one comma"
            + " between them";
    assertThat(Reads.problems(BEGIN.replace("B: [1, 0]", "B: [1,6, 0,1]")))
        .containsExactly("3:24: points → B: found [1, 6, 0, 1]" + hint);
    assertThat(Reads.problems(BEGIN.replace("B: [1, 0]", "B: [1 0]")))
        .containsExactly("3:24: points → B: found [1 0]" + hint);
    assertThat(Reads.problems(BEGIN.replace("B: [1, 0]", "B: [1]")))
        .containsExactly("3:24: points → B: found [1]; wanted: coordinates such as [0.5, 2]");
  }

  @Test
  void oneMistakeDoesNotHideAnother() {
    assertThat(Reads.problems(BEGIN.replace("m: [A, B]", "m: {weight: -6 kg, count: 0}")))
        .hasSize(2)
        .allMatch(one -> one.contains("members → m → "));
    assertThat(
            Reads.problems(
                BEGIN
                    + """
                    connections:
                      rope:
                        reeving: [{end: A, joins: m}, {sheave: B, joins: k, radius: 3}, {end: A, joins: m}]
                        efficiency: 95
                    """))
        .satisfiesExactly(
            one -> assertThat(one).endsWith("no key turns; wanted: clockwise or counter-clockwise"),
            one -> assertThat(one).endsWith("efficiency 95; wanted: above 0 and at most 1"));
    assertThat(
            Reads.problems(
                BEGIN
                    + """
                    loads: {f: {couple: 1, member: m}}
                    cases: {c: {factors: {g: 1}}}
                    ask: [f.couple in d]
                    """))
        .satisfiesExactly(
            one -> assertThat(one).contains("cases → c → factors → g: "),
            one ->
                assertThat(one)
                    .endsWith(
                        "ask: found \"d\" in \"f.couple in d\"; wanted: the name of a case: c"));
    assertThat(Reads.problems(BEGIN + "ask: [f.couple in \"all loads\"]\nloads: {f: 3}\n"))
        .hasSize(1);
  }

  @Test
  void missingAndMisplacedFormatIsTold() {
    assertThat(Reads.problems("device: x\nmembers: {m: {}}\n"))
        .containsExactly("1:1: file: found no key format; wanted: format: 1");
    assertThat(Reads.problems("device: x\nformat: 1\nmembers: {m: {}}\n"))
        .containsExactly(
            "2:1: format: found format behind other keys; wanted: format as first key");
  }

  private static final String LOADED =
      BEGIN
          + """
          connections:
            jack: {screw: [A, B], joins: [m, ground], lead: 1 mm, mean radius: 1 mm, friction: 0.1}
            sill: {contact base: A, joins: [m, ground], push: up, width: 1, friction: 0.3}
            k: {screw: [A, C], joins: [k, ground], lead: 1 mm, mean radius: 1 mm, friction: 0.1}
          loads:
            hand: {force: 1, direction: up, member: m, at: B}
            ring: {force: 1, direction: up, joint: C}
            keg: {weight: 1 kg, member: m}
            turn: {couple: 2, member: m}
          seek:
            pull: {want: force, direction: up, member: m, at: B}
          """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      quoteCharacter = '´',
      value = {
        "{vary: hnad}¦vary: found \"hnad\"; wanted: the name of a load; the nearest is \"hand\"",
        "{vary: [turn, hnad]}¦vary: found \"hnad\"; wanted: the name of a load; the nearest is"
            + " \"hand\"",
        "{vary: pull}¦vary: found \"pull\"; wanted: a given load, not a sought one",
        "{vary: [hand, hand]}¦: found multiple [hand, hand]; wanted: names that differ",
        "{move: turn, from: A, to: B}¦move: found \"turn\"; wanted: the name of a force or weight at"
            + " a point of a member: hand",
        "{move: keg, from: A, to: B}¦move: found \"keg\"; wanted: the name of a force or weight at a"
            + " point of a member: hand",
        "{move: ring, from: A, to: B}¦move: found \"ring\"; wanted: the name of a force or weight at"
            + " a point of a member: hand",
        "{move: hand, from: A}¦: found no key to; wanted: the name of a point, or coordinates such as"
            + " [0.5, 2]",
        "{move: hand, from: A, to: D}¦to: found \"D\"; wanted: the name of a point: A, B, C, A again",
        "{move: hand, from: A, to: A}¦: found \"A\"; wanted: two different points",
        "{move: hand, from: A, to: A again}¦move: found \"A–A again\"; wanted: two points at"
            + " different places"
      })
  void aLimitIsToldWhatItCanVary(String limit, String problem) {
    String place = problem.startsWith(":") ? "limits → l" : "limits → l → ";
    assertThat(Reads.problems(LOADED + "limits: {l: " + limit + "}\n"))
        .hasSize(1)
        .first()
        .asString()
        .endsWith(": " + place + problem);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      quoteCharacter = '´',
      value = {
        "sill: 3¦ → sill: found \"3\"; wanted: the ground under a contact base, such as {length: 300"
            + " mm, pressure: 100 kPa}",
        "sil: {length: 1}¦ → sil: found \"sil\"; wanted: the name of a contact base; the nearest is"
            + " \"sill\"",
        "hand: {length: 1}¦ → hand: found \"hand\"; wanted: the name of a contact base: sill",
        "jack: {length: 1}¦ → jack: found \"jack\"; wanted: the name of a contact base: sill",
        "sill: {pressure: 1}¦ → sill: found no key length; wanted: a length",
        "sill: {length: 0}¦ → sill → length: found length 0; wanted: a number above 0",
        "sill: {length: 1, adhesion: -1}¦ → sill → adhesion: found adhesion -1; wanted: 0 or more",
        "sill: {length: 1, pressure: 1, soil: clay}¦ → sill: found pressure and soil; wanted: one of"
            + " pressure, soil, drained and undrained, or none for ground that does not give",
        "sill: {length: 1, pressure: 0}¦ → sill → pressure: found pressure 0; wanted: a number"
            + " above 0",
        "sill: {length: 1, pressure: 18 kN/m^3}¦ → sill → pressure: found \"18 kN/m^3\"; wanted: a"
            + " pressure (kN/m³ is a unit of force per volume; a pressure is wanted: write for"
            + " example Pa, kPa or psi)",
        "sill: {length: 1, source: a book}¦ → sill → source: found the key source; wanted: a source"
            + " only for a pressure",
        "sill: {length: 1, undrained: 5}¦ → sill → undrained: found \"5\"; wanted: values by name:"
            + " strength, overburden",
        "sill: {length: 1, undrained: {strength: 0}}¦ → sill → undrained → strength: found strength"
            + " 0; wanted: a number above 0",
        "sill: {length: 1, undrained: {strenth: 5}}¦ → sill → undrained → strenth: found the key"
            + " \"strenth\"; wanted: a known key; the nearest is \"strength\"",
        "sill: {length: 1, drained: {friction angle: 30}}¦ → sill → drained: found no key weight;"
            + " wanted: a force per volume",
        "sill: {length: 1, drained: {friction angle: 30, weight: 18 kg/m^3}}¦ → sill → drained →"
            + " weight: found \"18 kg/m^3\"; wanted: a force per volume ('kg/m^3' is"
            + " no unit of a kind of quantity known here: write kgf/m³)",
        "sill: {length: 1, cleat: {depth: 1, friction angle: 30, weight: -1}}¦ → sill → cleat: found"
            + " unit weight -1.0; wanted: 0 or more"
      })
  void groundIsToldWhatItCanBe(String ground, String problem) {
    assertThat(Reads.problems(LOADED + "ground: {" + ground + "}\n"))
        .hasSize(1)
        .first()
        .asString()
        .endsWith(": ground " + problem);
  }

  @Test
  void anUnknownSoilIsToldTheNearest() {
    String soil = "ground: {sill: {length: 1, soil: \"Canadian house plans: firm cley\"}}\n";
    assertThat(Reads.problems(LOADED + soil))
        .hasSize(1)
        .first()
        .asString()
        .contains(
            "ground → sill → soil: found \"Canadian house plans: firm cley\"; wanted: \"Canadian"
                + " house plans: firm clay\"");
  }

  @Test
  void groundIsReadInAnyUnit() {
    DeviceFile file =
        Reads.file(
            LOADED
                + """
                ground:
                  sill:
                    length: 300 mm
                    drained: {friction angle: 30, cohesion: 5 kPa, weight: 18 kN/m^3, overburden: 9 kPa}
                    adhesion: 2 kPa
                    cleat: {depth: 20 cm, friction angle: 30 deg, weight: 18000}
                """);
    assertThat(file.foundations())
        .containsExactly(
            new Foundation(
                "sill",
                0.3,
                Optional.of(new Drained(Math.PI / 6, 5000, 18000, 9000)),
                2000,
                Optional.of(new Cleat(0.2, Math.PI / 6, 0, 18000))));
  }

  @Test
  void aLimitMayMoveALoadBetweenCoordinates() {
    DeviceFile file = Reads.file(LOADED + "limits: {l: {move: hand, from: [0, 0], to: [1, 0]}}\n");
    assertThat(file.limits()).containsEntry("l", Variation.place("hand", "[0, 0]", "[1, 0]"));
    assertThat(file.device().points()).containsKeys("[0, 0]", "[1, 0]");
  }

  @Test
  void aCoupleTurnsAScrewOnlyIfNoBodyHasItsName() {
    String couple = "  twist: {couple: 2, screw: jack}\nseek:";
    Reads.file(LOADED.replace("seek:", couple));
    assertThat(Reads.problems(LOADED.replace("seek:", couple.replace("jack", "k"))))
        .hasSize(1)
        .first()
        .asString()
        .endsWith(
            "loads → twist → screw: found \"k\"; wanted: a screw whose name no body has: a couple on"
                + " the body is meant else");
    assertThat(Reads.problems(LOADED.replace("seek:", couple.replace("jack", "jak"))))
        .hasSize(1)
        .first()
        .asString()
        .endsWith("wanted: the name of a screw; the nearest is \"jack\"");
    assertThat(Reads.problems(LOADED.replace("seek:", couple.replace("jack}", "jack, at: A}"))))
        .hasSize(1)
        .first()
        .asString()
        .endsWith("found the key at; wanted: no place: a couple on a screw turns all of it");
  }

  @Test
  void pushesThatContradictOneAnotherAreTold() {
    assertThat(
            Reads.problems(
                BEGIN
                    + """
                    connections:
                      floor: {contact: B, joins: [m, ground], push: up, friction: 0.3}
                      lid: {roller: B, joins: [m, ground], push: down, sides: one}
                    """))
        .containsExactly(
            "8:46: connections → lid → push: found push against the one of floor at the same place;"
                + " wanted: one of the two pushes; both make a slot with two sides: for that a slot"
                + " or a roller of two sides, or two places that are apart");
  }

  @Test
  void namesThatNoPartMayHaveAreTold() {
    assertThat(Reads.problems("format: 1\ndevice: x\nmembers: {ground: {}, \" m\": {}}\n"))
        .containsExactly(
            "3:11: members → ground: found \"ground\" again; wanted: a name that no other body has"
                + " (ground is reserved)",
            "3:23: members →  m: found \" m\"; wanted: a text of 1 to 80 characters without \","
                + " line breaks or outer blanks");
  }

  @Test
  void problemsOfTheWholeModelAreTakenToTheirPlace() {
    String wanted = "the place of joint C, which is C";
    assertThat(
            Reads.problems(
                BEGIN
                    + """
                    connections:
                      far: {strut: [A, B], joins: [C, m]}
                      c: {clamp: C, joins: [C, m]}
                      rope:
                        reeving: [{end: A, joins: m}, {sheave: B, joins: k, radius: 3, turns: clockwise},
                          {end: A, joins: m}]
                    loads:
                      w: {weight: 1 kg, member: m}
                    advantage: {effort: w, resistance: c}
                    """))
        .satisfiesExactly(
            one -> assertThat(one).startsWith("7:16: ").endsWith(wanted),
            one -> assertThat(one).startsWith("8:").contains("connections → c"),
            one -> assertThat(one).startsWith("10:14: connections → rope → reeving: found stops"),
            one -> assertThat(one).startsWith("10:14: connections → rope → reeving: found stops"),
            one -> assertThat(one).startsWith("14:36: advantage → resistance: found \"c\""));
  }

  @Test
  void whatFollowsFromAnErrorIsNotReported() {
    String device =
        """
        format: 1
        device: x
        points: {A: [0, 0], B: [1, 0]}
        members: {m: [A, B]}
        joints: [A]
        connections:
          p: {pin: A, joins: [m, ground]}
        loads:
          f: {force: 1, direction: up, member: m, at: B}
          g: {force: 1, direction: up, joint: A}
        cases: {c: {factors: {f: 2}}}
        advantage: {effort: f, resistance: g}
        expect: {p.x: {value: 1, digits: 1}}
        """;
    assertThat(Reads.problems(device)).isEmpty();
    assertThat(Reads.problems(device.replace("points:", "poinst:"))).hasSize(1);
    assertThat(Reads.problems(device.replace("points: {A: [0, 0], B: [1, 0]}", "points: 5")))
        .hasSize(1);
    assertThat(Reads.problems(device.replace("A: [0, 0]", "A: [0]"))).hasSize(1);
    assertThat(Reads.problems(device.replace("members:", "member:"))).hasSize(1);
    assertThat(Reads.problems(device.replace("m: [A, B]", "m: 7"))).hasSize(1);
    assertThat(Reads.problems(device.replace("joints: [A]", "joint: [A]"))).hasSize(1);
    assertThat(Reads.problems(device.replace("connections:", "connection:"))).hasSize(1);
    assertThat(Reads.problems(device.replace("pin: A", "pim: A"))).hasSize(1);
    assertThat(Reads.problems(device.replace("loads:", "loades:"))).hasSize(1);
    assertThat(
            Reads.problems(device.replace("{force: 1, direction: up, member", "{force: 1, member")))
        .hasSize(1);
  }
}
