package bellcrank.statics.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AskTest {

  private static Ask part(String name, Measure measure) {
    return Ask.of(name, measure);
  }

  private static Ask group(Measure measure, List<String> bodies, String... from) {
    return Ask.of(new Subject.Group(bodies, List.of(from)), measure);
  }

  private static Ask resultant(Measure measure, String... loads) {
    return Ask.of(new Subject.Resultant(List.of(loads)), measure);
  }

  private static Ask centre(Measure measure, String... bodies) {
    return Ask.of(new Subject.Centre(List.of(bodies)), measure);
  }

  private static Ask multiple(String... loads) {
    return Ask.of(new Subject.Multiple(List.of(loads)), Measure.VALUE);
  }

  private static Ask distance(String load) {
    return Ask.of(new Subject.Place(load), Measure.DISTANCE);
  }

  private static Ask whole(Measure measure) {
    return Ask.of(new Subject.Whole(), measure);
  }

  /** Every form of the format's page, in its order. */
  private static final Map<String, Ask> FORMS =
      Map.ofEntries(
          Map.entry("ram", Ask.of("ram")),
          Map.entry("heel.x", part("heel", Measure.X)),
          Map.entry("heel.y", part("heel", Measure.Y)),
          Map.entry("heel.size", part("heel", Measure.SIZE)),
          Map.entry("heel.direction", part("heel", Measure.DIRECTION)),
          Map.entry("heel.couple", part("heel", Measure.COUPLE)),
          Map.entry("heel.x on lever", part("heel", Measure.X).onBody("lever")),
          Map.entry("heel.moment about hinge", part("heel", Measure.MOMENT).aboutPoint("hinge")),
          Map.entry(
              "heel.moment on lever about hinge",
              part("heel", Measure.MOMENT).onBody("lever").aboutPoint("hinge")),
          Map.entry("wall.normal", part("wall", Measure.NORMAL)),
          Map.entry("toe.friction", part("toe", Measure.FRICTION)),
          Map.entry("base.offset", part("base", Measure.OFFSET)),
          Map.entry("stay.tension", part("stay", Measure.TENSION)),
          Map.entry("stay.compression", part("stay", Measure.COMPRESSION)),
          Map.entry("hoist.end tension", part("hoist", Measure.END_TENSION)),
          Map.entry("brake.ratio", part("brake", Measure.RATIO_OF_TENSIONS)),
          Map.entry("jack.raising", part("jack", Measure.RAISING)),
          Map.entry("jack.lowering", part("jack", Measure.LOWERING)),
          Map.entry("block.mass", part("block", Measure.MASS)),
          Map.entry("group(a, b).x", group(Measure.X, List.of("a", "b"))),
          Map.entry(
              "group(a, b).couple about P",
              group(Measure.COUPLE, List.of("a", "b")).aboutPoint("P")),
          Map.entry("group(a, b).x from group(c)", group(Measure.X, List.of("a", "b"), "c")),
          Map.entry("group(a, b).y from ground", group(Measure.Y, List.of("a", "b"), "ground")),
          Map.entry(
              "group(a).x from group(c, ground)", group(Measure.X, List.of("a"), "c", "ground")),
          Map.entry("resultant.x", resultant(Measure.X)),
          Map.entry("resultant.moment about P", resultant(Measure.MOMENT).aboutPoint("P")),
          Map.entry("resultant(hand, wind).size", resultant(Measure.SIZE, "hand", "wind")),
          Map.entry("resultant.line", resultant(Measure.LINE)),
          Map.entry("resultant(hand).line", resultant(Measure.LINE, "hand")),
          Map.entry(
              "resultant.distance along A–B", resultant(Measure.DISTANCE).alongLine("A", "B")),
          Map.entry("resultant(hand).arm about P", resultant(Measure.ARM, "hand").aboutPoint("P")),
          Map.entry("stay.length", part("stay", Measure.LENGTH)),
          Map.entry("point(tip).x", Ask.of(new Subject.Spot("tip"), Measure.X)),
          Map.entry(
              "point(tip).y on jib", Ask.of(new Subject.Spot("tip"), Measure.Y).onBody("jib")),
          Map.entry("centre.x", centre(Measure.X)),
          Map.entry("centre(lever, jib).y", centre(Measure.Y, "lever", "jib")),
          Map.entry("centre.distance along A–B", centre(Measure.DISTANCE).alongLine("A", "B")),
          Map.entry("advantage", Ask.of(new Subject.Advantage(), Measure.ACTUAL)),
          Map.entry("advantage.ideal", Ask.of(new Subject.Advantage(), Measure.IDEAL)),
          Map.entry(
              "hand.size per ram.size", part("hand", Measure.SIZE).per(part("ram", Measure.SIZE))),
          Map.entry(
              "hand per ram each in gust",
              Ask.of("hand").per(Ask.of("ram").eachPart()).inCase("gust")),
          Map.entry(
              "lever.moment at 0.4 m of heel–head",
              part("lever", Measure.MOMENT).atDistance(0.4, "heel", "head")),
          Map.entry(
              "lever.shear at 2 m of heel–head",
              part("lever", Measure.SHEAR).atDistance(2, "heel", "head")),
          Map.entry(
              "lever.normal at 0 m of heel–head",
              part("lever", Measure.NORMAL).atDistance(0, "heel", "head")),
          Map.entry(
              "lever.moment just before 2 m of heel–head",
              part("lever", Measure.MOMENT).beside(Side.BEFORE, 2, "heel", "head")),
          Map.entry(
              "lever.shear just after 2 m of heel–head",
              part("lever", Measure.SHEAR).beside(Side.AFTER, 2, "heel", "head")),
          Map.entry("lever.peak moment", part("lever", Measure.PEAK_MOMENT)),
          Map.entry(
              "lever.place of peak shear along heel–head",
              part("lever", Measure.PLACE_OF_PEAK_SHEAR).alongLine("heel", "head")),
          Map.entry("outcome", whole(Measure.OUTCOME)),
          Map.entry("freedoms", whole(Measure.FREEDOMS)),
          Map.entry("redundancy", whole(Measure.REDUNDANCY)),
          Map.entry("verdict", whole(Measure.VERDICT)),
          Map.entry("friction factor", whole(Measure.FRICTION_FACTOR)),
          Map.entry("greatest push", Ask.of("push").greatest()),
          Map.entry("least wall.normal", part("wall", Measure.NORMAL).least()),
          Map.entry(
              "greatest stay.tension each in gust",
              part("stay", Measure.TENSION).eachPart().greatest().inCase("gust")),
          Map.entry(
              "least hand per ram each in gust",
              Ask.of("hand").per(Ask.of("ram").eachPart()).least().inCase("gust")),
          Map.entry("greatest multiple", multiple().greatest()),
          Map.entry("least multiple in gust", multiple().least().inCase("gust")),
          Map.entry("greatest multiple(winch, hand)", multiple("winch", "hand").greatest()),
          Map.entry("multiple(winch)", multiple("winch")),
          Map.entry(
              "greatest distance(climber) along foot–top",
              Ask.of(new Subject.Place("climber"), Measure.VALUE)
                  .alongLine("foot", "top")
                  .greatest()),
          Map.entry("least distance(climber)", distance("climber").least()),
          Map.entry("outcome in gust", whole(Measure.OUTCOME).inCase("gust")),
          Map.entry(
              "stay.tension each in gust", part("stay", Measure.TENSION).eachPart().inCase("gust")),
          Map.entry("A–C.tension", part("A–C", Measure.TENSION)),
          Map.entry("far rope.tension", part("far rope", Measure.TENSION)));

  @Test
  void everyFormOfThePageIsReadAndWrittenUnchanged() {
    FORMS.forEach(
        (text, ask) -> {
          assertThat(Ask.parse(text)).as(text).isEqualTo(ask);
          assertThat(ask.text()).isEqualTo(text);
          assertThat(ask).hasToString(text);
        });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          ram.value                              | ram
          advantage.actual                       | advantage
          advantage.value                        | advantage
          lever.moment at 40 cm of heel to head  | lever.moment at 0.4 m of heel–head
          lever.moment at 4 ft 2 in of A – B     | lever.moment at 1.27 m of A–B
          centre.distance along rear axle to nose| centre.distance along rear axle–nose
          heel.moment about hinge on lever       | heel.moment on lever about hinge
          stay in gust each                      | stay each in gust
          hoist.end    tension                   | hoist.end tension
          group ( a,b ) . x from "ground"        | group(a, b).x from ground
          group(a) in gust from group(c)         | group(a) from group(c) in gust
          "heel".x on "lever"                    | heel.x on lever
          foot of pole.x                         | "foot of pole".x
          push from left to right.x              | "push from left to right".x
          heel.x on push from left               | heel.x on "push from left"
          No. 3.x                                | "No. 3".x
          bar (left).tension                     | "bar (left)".tension
          greatest   multiple ( a,"b" )          | greatest multiple(a, b)
          greatest hand in gust each             | greatest hand each in gust
          least distance (hand) in gust along A to B | least distance(hand) along A–B in gust
          greatest "least push"                  | greatest "least push"
          "greatest".x                           | "greatest".x
          greatest.x                             | "greatest".x
          verdict.x                              | "verdict".x
          distance.x                             | distance.x
          greatest group                         | greatest "group"
          group.x                                | "group".x
          outcome.x                              | "outcome".x
          each.x                                 | "each".x
          heel.x on in in in                     | heel.x on "in" in "in"
          group(key in lock, No. 3).x            | group("key in lock", "No. 3").x
          centre.distance along to to A          | centre.distance along "to"–A
          centre.distance along "A–B"–"to on C"  | centre.distance along "A–B"–"to on C"
          """)
  void otherWaysToWriteAreRead(String text, String canonical) {
    assertThat(Ask.parse(text).text()).isEqualTo(canonical);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a.b",
        "a, b",
        "f(x)",
        "stop at end",
        "up to",
        "group",
        "centre",
        "outcome",
        "verdict",
        "friction factor",
        "multiple",
        "greatest",
        "least load",
        "on",
        "A. C"
      })
  void namesThatCouldBeSomethingElseAreQuoted(String name) {
    assertThat(Ask.of(name).text()).isEqualTo('"' + name + '"');
    assertThat(Ask.parse(Ask.of(name).text())).isEqualTo(Ask.of(name));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "atlas",
        "hinge pin",
        "A–C",
        "group 2",
        "Each",
        "ground",
        "½ bar",
        "x",
        "distance",
        "leastways"
      })
  void plainNamesAreNotQuoted(String name) {
    assertThat(Ask.of(name).text()).isEqualTo(name);
  }

  @Test
  void lengthsKeepEveryDigit() {
    for (double length : new double[] {0.1 + 0.2, 1e-9, 1.0 / 3, 123456789.125, 1e12, 4.9e-324}) {
      Ask ask = Ask.of("lever", Measure.SHEAR).atDistance(length, "A", "B");
      assertThat(Ask.parse(ask.text())).isEqualTo(ask);
    }
    assertThat(new Stretch("A", "B", OptionalDouble.of(-0.0)).distance()).hasValue(0.0);
  }

  private static void refused(ThrowingCallable parsing, String piece, String text, String wanted) {
    assertThatThrownBy(parsing)
        .isInstanceOfSatisfying(
            ModelException.class,
            e -> assertThat(e.problems()).contains(new Problem("ask", piece, text, wanted)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          ` `                       | ``            | an ask such as
          heel per                  | ``            | an ask such as
          stay.tensoin              | tensoin       | a measure; the nearest is "tension"
          stay.X                    | X             | a measure; the nearest is "x"
          No. 3                     | 3             | a measure: value, x, y,
          heel.                     | ``            | a measure: value, x, y,
          .x                        | ``            | a text of 1 to 80 characters
          "heel.x                   | "             | a closing double quote
          "".x                      | ``            | a text of 1 to 80 characters
          he"el.x                   | he"el         | a text of 1 to 80 characters
          "heel"s.x                 | s.x           | the end, or one of
          heel.x lever              | lever         | the end, or one of
          group(a)x                 | x             | the end, or one of
          heel.x on                 | on            | the name of a body after on
          heel.moment about         | about         | the name of a point after about
          heel.x in                 | in            | the name of a case after in
          heel on lever.x           | lever.x       | the measure before on
          heel.x on a on b          | on            | each ending once
          heel.x about a about b    | about         | each ending once
          heel.x each each          | each          | each ending once
          heel.x in a in b          | in            | each ending once
          m.x along A–B along A–B   | at or along   | each ending once
          m.x along A–B at 1 m of A–B | at or along | each ending once
          heel.x from lever         | from lever    | the end, or one of
          "heel" from ground        | from          | group(…) before from
          group(a) from             | from          | ground or group(…) after from
          group(a) from lever       | lever         | ground or group(…)
          group(a) from ground from ground | from   | each ending once
          group(a, a).x             | group         | names that differ
          group(a).x from group(b, b) | from        | names that differ
          group(a, ).x              | group         | names with commas between them
          group().x                 | group         | names with commas between them
          group(a                   | group         | a comma or a closing bracket after "a"
          group(a(b)).x             | group         | a comma or a closing bracket after "a"
          group("a)                 | "             | a closing double quote
          point(a, b).x          | point         | one point: point(a).x
          resulant(a, b).x          | resulant(a, b)| group(…), resultant(…), centre(…), point(…), multiple(…) or distance(…)
          ladder at wall.x          | at wall.x     | a place on a bar
          lever.moment at           | at            | a place on a bar
          lever.moment just 1 m of A–B | just       | just before LENGTH of A–B
          lever.moment just after   | at            | a place on a bar
          lever.moment at 1 m of A–B just after 1 m of A–B | at or along | each ending once
          lever.moment at 3 of A–B  | 3             | a length; 3 has no unit
          lever.moment at 3 N of A–B| 3 N           | a length;
          lever.moment at -1 m of A–B | -1 m        | a length of 0 or more
          lever.moment at 1 m of    | of            | two points
          lever.moment at 1 m of A-B| of            | two points
          m.x along A               | along         | two points
          m.x along A on b to c     | along         | two points
          m.x along A–              | along         | two points
          m.x along –B              | along         | two points
          m.x along A–B–C           | B–C           | one en dash or to
          m.x along A–B to C        | B to C        | one en dash or to
          m.x along A–A             | A             | two different points
          a per b per c             | per           | one ratio of two asks
          greatest                  | greatest      | an ask after greatest; a part of that name
          greatest least a          | least         | greatest or least once, before the whole ask
          a per least b             | least         | greatest or least once, before the whole ask
          a per multiple(b)         | per           | two plain asks: greatest or least stands before
          greatest distance(b) per a | per          | two plain asks: greatest or least stands before
          greatest a in gust per b  | in            | the case after the second ask
          greatest multiple(a, a)   | multiple      | names that differ
          greatest multiple(a).x    | .x            | the end, or one of
          greatest multiple.x       | x             | no measure: a multiple and a distance have none
          greatest multiple()       | multiple      | names with commas between them
          greatest distance(a, b)   | distance      | one load: distance(a) along A–B
          greatest distance()       | distance      | names with commas between them
          greatest distance(a) along A–A | A        | two different points
          a in gust per b           | in            | the case after the second ask
          """)
  void textsThatAreNoAskAreRefusedWithTheOffendingPiece(String text, String piece, String wanted) {
    assertThatThrownBy(() -> Ask.parse(text))
        .isInstanceOfSatisfying(
            ModelException.class,
            e -> {
              assertThat(e.problems()).hasSize(1);
              Problem problem = e.problems().get(0);
              assertThat(problem.part()).isEqualTo("ask");
              assertThat(problem.field()).isEqualTo(piece);
              assertThat(problem.value()).isEqualTo(text);
              assertThat(problem.wanted()).startsWith(wanted);
            });
  }

  @Test
  void refusalsReadAsSentences() {
    assertThatThrownBy(() -> Ask.parse("stay.tensoin"))
        .hasMessage(
            "ask stay.tensoin: found \"tensoin\"; wanted: a measure; the nearest is \"tension\"");
    assertThatThrownBy(() -> Ask.parse("m.x along A–B–C"))
        .hasMessage(
            "ask m.x along A–B–C: found \"B–C\"; wanted: one en dash or to; a point's name with either in"
                + " it in double quotes");
  }

  @Test
  void partsOfAnAskRefuseWhatHasNoText() {
    Ask ram = Ask.of("ram");
    assertThatThrownBy(() -> Ask.of("a\"b")).isInstanceOf(ModelException.class);
    assertThatThrownBy(() -> ram.onBody(" lever")).isInstanceOf(ModelException.class);
    assertThatThrownBy(() -> ram.aboutPoint("")).isInstanceOf(ModelException.class);
    assertThatThrownBy(() -> ram.inCase("a\nb")).isInstanceOf(ModelException.class);
    assertThatThrownBy(() -> ram.alongLine("A", "A")).hasMessageContaining("two different points");
    assertThatThrownBy(() -> ram.atDistance(-1, "A", "B")).hasMessageContaining("0 or more");
    assertThatThrownBy(() -> ram.atDistance(Double.NaN, "A", "B"))
        .hasMessageContaining("a finite number");
    assertThatThrownBy(() -> group(Measure.X, List.of())).hasMessageContaining("at least 1 names");
    assertThatThrownBy(() -> resultant(Measure.X, "a", "a")).hasMessageContaining("that differ");
    assertThatThrownBy(() -> centre(Measure.X, "")).isInstanceOf(ModelException.class);
    assertThatThrownBy(() -> whole(Measure.X))
        .hasMessage(
            "ask: measure is x; wanted: outcome, freedoms, redundancy, verdict or friction"
                + " factor");
    Ask ratio = ram.per(ram);
    assertThatThrownBy(() -> ratio.per(ram)).hasMessageContaining("no ratios themselves");
    assertThatThrownBy(() -> ram.per(ram.inCase("gust"))).hasMessageContaining("for both");
    assertThatThrownBy(() -> ratio.onBody("a")).hasMessageContaining("at its two sides");
    assertThatThrownBy(() -> ratio.aboutPoint("a")).hasMessageContaining("at its two sides");
    assertThatThrownBy(() -> ratio.alongLine("a", "b")).hasMessageContaining("at its two sides");
    assertThatThrownBy(ratio::eachPart).hasMessageContaining("at its two sides");
    assertThatThrownBy(() -> Ask.of(new Subject.Ratio(ram, ram), Measure.X))
        .hasMessageContaining("at its two sides");
    Ask end = ram.greatest();
    assertThatThrownBy(end::least).hasMessageContaining("greatest or least once");
    assertThatThrownBy(() -> ram.inCase("gust").least())
        .hasMessage(
            "ask: least is ram in gust; wanted: greatest or least once, before the whole ask, and the"
                + " case of the whole, not of the ask within");
    assertThatThrownBy(() -> end.per(ram)).hasMessageContaining("before the whole ratio");
    assertThatThrownBy(() -> ram.per(distance("hand"))).hasMessageContaining("are in none");
    assertThatThrownBy(() -> end.onBody("a")).hasMessageContaining("in the ask within");
    assertThatThrownBy(() -> end.aboutPoint("a")).hasMessageContaining("in the ask within");
    assertThatThrownBy(() -> end.alongLine("a", "b")).hasMessageContaining("in the ask within");
    assertThatThrownBy(end::eachPart).hasMessageContaining("in the ask within");
    assertThatThrownBy(() -> Ask.of(end.subject(), Measure.X))
        .hasMessageContaining("in the ask within");
    assertThatThrownBy(() -> Ask.of(new Subject.Multiple(List.of()), Measure.X))
        .hasMessageContaining("no measure");
    assertThatThrownBy(() -> Ask.of(new Subject.Place("a"), Measure.ARM))
        .hasMessageContaining("no measure");
    assertThatThrownBy(() -> distance("")).isInstanceOf(ModelException.class);
    assertThatThrownBy(() -> multiple("a", "a")).hasMessageContaining("that differ");
  }

  /** A yard's worth of parts, one of every kind; it need not be in balance. */
  private static Device yard() {
    DeviceBuilder yard =
        Device.named("barrel derrick")
            .point("heel", 0, 0)
            .point("head", 3, 4)
            .point("tip", 6, 4)
            .point("rest", 0, 0)
            .member(
                new Member("boom", List.of(), List.of(new Bar("heel", "head")), List.of("heel"), 2))
            .member("jib", "head", "tip")
            .member(new Member("drum", List.of("tip"), List.of(), List.of(), 1))
            .joint(new Joint("knot", "tip"))
            .pin("heel", "heel", "boom", "ground")
            .pin("elbow", "head", "boom", "jib", "drum")
            .clamp("splice", "tip", "jib", "drum")
            .roller("rest", "head", "boom", "ground", Direction.UP)
            .connect(new Slot("slot", "tip", "jib", "ground", Direction.RIGHT, Sides.TWO))
            .connect(new Guide("rail", "tip", "drum", "ground", Direction.UP))
            .strut("prop", End.of("boom", "head"), End.of("ground", "heel"))
            .line("stay", End.of("knot", "tip"), End.of("ground", "heel"))
            .connect(
                new Reeving(
                    "hoist",
                    List.of(
                        Stop.end("ground", "heel"),
                        Stop.sheave("boom", "head", 0, Turn.CLOCKWISE),
                        Stop.end("jib", "tip")),
                    1,
                    Reeving.Hauling.IDEAL))
            .connect(
                new Wrap(
                    "brake",
                    Stop.end("ground", "heel"),
                    new Stop(Stop.Kind.POST, "boom", "head", 0.1, Turn.CLOCKWISE),
                    Stop.end("jib", "tip"),
                    0.3,
                    0))
            .connect(
                new Screw(
                    "jack", End.of("boom", "head"), End.of("ground", "heel"), 0.01, 0.02, 0.1))
            .connect(new Contact("toe", "heel", "boom", "ground", Direction.UP, 0.3, 0.2))
            .connect(new ContactBase("base", "tip", "drum", "ground", Direction.UP, 0.4, 0.3, 0.3))
            .count("stay", 2)
            .count("elbow", 2)
            .count("brake", 2)
            .force("hand", "jib", "tip", Vector.of(0, -100))
            .load(new Couple("crank", "drum", 5))
            .load(
                new SpreadLoad(
                    "wind", "boom", "heel", "head", 1, 2, Optional.empty(), SpreadLoad.Per.LENGTH))
            .weight("barrel", "knot", "tip", 80)
            .weight("keg", "jib", "tip", 8)
            .load(new Weight("boom weight", "boom", Optional.empty(), 40))
            .load(new Couple("winding", "jack", 3))
            .load(new Spring("coil", End.of("boom", "head"), End.of("ground", "heel"), 100, 1))
            .load(new TorsionSpring("hair", "drum", "ground", 2, 0.1))
            .sought("pull", "jib", "tip", Direction.UP)
            .load(sought("push", Sought.Want.COMPONENTS, "jib"))
            .load(
                new Sought(
                    "wrench", Sought.Want.COUPLE, "drum", Optional.empty(), Optional.empty()))
            .load(
                new Sought(
                    "turning", Sought.Want.COUPLE, "jack", Optional.empty(), Optional.empty()))
            .load(sought("ballast", Sought.Want.MASS, "jib"))
            .loadCase(new LoadCase("gust", Map.of("wind", 2.0), 1))
            .advantage("pull", "hand");
    return yard.build();
  }

  private static Sought sought(String name, Sought.Want want, String body) {
    return new Sought(name, want, body, Optional.of("tip"), Optional.empty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "heel",
        "heel.x on ground in gust",
        "elbow on drum",
        "elbow.size on drum each",
        "heel.moment about tip",
        "splice.couple on drum",
        "splice on drum",
        "rest.normal",
        "slot.normal",
        "rail.couple",
        "rail.normal",
        "prop.compression",
        "stay.tension each",
        "heel.x each",
        "jack.raising",
        "hoist.end tension",
        "hoist.moment on boom about heel",
        "brake.ratio",
        "toe.friction",
        "base.offset",
        "hand.moment about heel",
        "crank.moment",
        "crank.moment about heel",
        "hair.couple",
        "coil.x",
        "wrench.couple",
        "ballast.mass",
        "push.direction",
        "group(boom, jib).x",
        "group(boom, jib).couple about heel",
        "group(boom).moment about heel",
        "group(boom).x from group(jib, ground)",
        "group(boom).y from ground",
        "resultant",
        "resultant(hand, wind).line",
        "resultant.distance along heel–head",
        "resultant.arm about heel",
        "centre(knot).x",
        "stay.length in gust",
        "prop.length",
        "jack.length",
        "hoist.length",
        "point(tip).x on jib in gust",
        "point(tip).y on knot",
        "point(tip).y on ground",
        "greatest point(tip).y on knot",
        "centre.distance along heel to head",
        "advantage",
        "advantage.ideal in gust",
        "outcome in gust",
        "hand.size per pull.size in gust",
        "winding",
        "winding.couple",
        "turning",
        "turning.couple in gust",
        "verdict in gust",
        "friction factor",
        "greatest pull",
        "least stay.tension each in gust",
        "greatest hand.size per pull.size in gust",
        "least group(boom, jib).x",
        "greatest boom.moment at 5 m of heel–head each",
        "greatest multiple",
        "least multiple(hand, barrel) in gust",
        "greatest distance(hand) along heel–tip",
        "greatest distance(keg) along heel–tip in gust",
        "boom.moment at 5 m of heel–head each",
        "boom.shear at 0 m of head–heel",
        "jib.normal at 9 ft of head–tip"
      })
  void asksThatADeviceAnswersPass(String text) {
    Ask ask = Ask.parse(text);
    assertThat(ask.check(yard())).isSameAs(ask);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          heal.x | heal | the name of a connection, load or sought quantity; the nearest is "heel"
          rest.tension | tension | what a roller has: x, y, size, direction, moment or normal
          heel.couple | couple | what a pin has: x, y, size, direction or moment
          hoist.couple | couple | what a reeving has: x, y, size, direction, moment, tension, end tension or length
          hand.mass | mass | what a force has: x, y, size, direction or moment
          crank.x | x | what a couple has: couple or moment
          wind.couple | couple | what a spread load has: x, y, size, direction or moment
          barrel.mass | mass | what a weight has: x, y, size, direction or moment
          coil.tension | tension | what a spring has: x, y, size, direction or moment
          hair.x | x | what a torsion spring has: couple or moment
          push.couple | couple | what a sought force has: x, y, size, direction or moment
          wrench.size | size | what a sought couple has: couple or moment
          ballast.couple | couple | what a sought mass has: x, y, size, direction, moment or mass
          heel.x on jib | jib | a body that heel joins: boom, ground
          stay.tension on ground | on ground | no body: the tension of a line is not of one
          rest on ground | on ground | no body: the value of a roller is not of one
          hand.x on jib | on jib | no body: only the force of a connection is asked on one
          heel.moment | moment | a point: moment about POINT
          hand.moment | moment | a point: moment about POINT
          group(boom).couple | couple | a point: couple about POINT
          resultant.moment | moment | a point: moment about POINT
          resultant.arm | arm | a point: arm about POINT
          heel.moment about tpi | tpi | the name of a point; the nearest is "tip"
          heel.x about tip | about tip | no point: this x is about none
          heel.x along heel–tip | along heel–tip | no line: only the distance of a resultant, centre or load, and peaks of a member are along one
          heal.moment at 1 m of heel–tip | heal | the name of a member: boom, drum, jib
          hand.x along heel–tip | along heel–tip | no line: only the distance of a resultant, centre or load, and peaks of a member are along one
          resultant.x at 1 m of heel–tip | at 1 m of heel–tip | no place: only normal, shear and moment of a member have one
          splice.x each | each | a part with a count above 1
          hand each | each | a part with a count above 1
          resultant.x each | each | a part with a count above 1
          jib.shear at 1 m of head–tip each | each | a part with a count above 1
          elbow.direction each | each | no each: the direction of equal parts is the same
          brake.ratio each | each | no each: the ratio of equal parts is the same
          heel.x in gsut | gsut | the name of a case; the nearest is "gust"
          group(bom).x | bom | the name of a body; the nearest is "boom"
          group(boom).x from group(jbi) | jbi | the name of a body; the nearest is "jib"
          group(boom, jib).x from group(jib) | jib | a body outside the group
          group(boom).line | line | what a group has: x, y, size, direction, couple or moment
          group(boom).x on jib | on jib | no body: only the force of a connection is asked on one
          resultant(pull).x | pull | the name of a given load: barrel, boom weight, coil, crank, hair, hand, keg, wind, winding
          resultant.couple | couple | what a resultant has: x, y, size, direction, moment, line, distance or arm
          resultant.distance | distance | a line from whose start it is: along A–B
          resultant.distance along heel–rest | heel–rest | two points at different places
          resultant.distance along heel–topp | topp | the name of a point: head, heel, rest, tip
          centre | value | what a centre has: x, y or distance
          point(tip).x | point(tip).x | a body that has the point: jib, drum, knot; write on BODY after it
          point(tip).x on boom | boom | a body that has the point: jib, drum, knot
          point(rest).x on boom | boom | ground: no other body has the point
          point(tpi).x on jib | tpi | the name of a point; the nearest is "tip"
          point(tip).size on jib | size | what a point has: x or y
          point(tip) on jib | value | what a point has: x or y
          point(tip).x on jib about heel | about heel | no point: this x is about none
          heel.length | length | what a pin has: x, y, size, direction or moment
          brake.length | length | what a wrap has: x, y, size, direction, moment, tension, end tension or ratio
          stay.length each | each | no each: the length of equal parts is the same
          stay.length on knot | on knot | no body: the length of a line is not of one
          centre(ground).x | ground | the name of a member or joint: boom, drum, jib, knot
          advantage.x | x | what an advantage has: ideal, actual, efficiency or return efficiency
          winding.x | x | what a couple on a screw has: couple
          winding.moment | moment | what a couple on a screw has: couple
          turning.moment about heel | moment | what a sought couple on a screw has: couple
          resultant(hand, winding).x | winding | a load in the plane, not one on a screw
          multiple(hand) | multiple(hand) | greatest or least before it
          distance(hand) along heel–tip | distance(hand) along heel–tip | greatest or least before it
          greatest heal.x | heal | the name of a connection, load or sought quantity; the nearest is "heel"
          greatest heel.tension | tension | what a pin has: x, y, size, direction or moment
          greatest outcome | outcome | an ask for a number that may differ from state to state, or multiple, multiple(LOAD) or distance(LOAD) along A–B
          least friction factor | friction factor | an ask for a number that may differ from state to state, or multiple, multiple(LOAD) or distance(LOAD) along A–B
          greatest resultant.line | resultant.line | an ask for a number that may differ from state to state, or multiple, multiple(LOAD) or distance(LOAD) along A–B
          greatest verdict per heel.x | verdict | an ask that is answered by a number
          greatest heel.x in gsut | gsut | the name of a case; the nearest is "gust"
          greatest multiple(pull) | pull | the name of a given load: barrel, boom weight, coil, crank, hair, hand, keg, wind, winding
          greatest multiple(hnad) | hnad | the name of a given load; the nearest is "hand"
          greatest multiple(hand) each | each | a part with a count above 1
          greatest multiple on boom | on boom | no body: only the force of a connection is asked on one
          greatest multiple along heel–tip | along heel–tip | no line: only the distance of a resultant, centre or load, and peaks of a member are along one
          greatest distance(keg) | distance | a line from whose start it is: along A–B
          greatest distance(keg) at 1 m of heel–tip | distance | a line from whose start it is: along A–B
          greatest distance(keg) along heel–rest | heel–rest | two points at different places
          greatest distance(keg) along heel–topp | topp | the name of a point: head, heel, rest, tip
          greatest distance(barrel) along heel–tip | barrel | the name of a force or weight at a point of a member: hand, keg
          greatest distance(boom weight) along heel–tip | boom weight | the name of a force or weight at a point of a member: hand, keg
          greatest distance(crank) along heel–tip | crank | the name of a force or weight at a point of a member: hand, keg
          greatest distance(keg) about heel along heel–tip | about heel | no point: this distance is about none
          outcome per heel.x | outcome | an ask that is answered by a number
          heel.x per resultant.line | resultant.line | an ask that is answered by a number
          heel.x per heal.x | heal | the name of a connection, load or sought quantity; the nearest is "heel"
          boom.x | x | what a member has: moment, normal, shear, peak normal, peak shear, peak moment, place of peak normal, place of peak shear or place of peak moment
          boom.moment just before 0 m of heel–head | just before 0 m of heel–head | no side, or the other one: bar heel–head starts there
          boom.moment just after 5 m of heel–head | just after 5 m of heel–head | no side, or the other one: bar heel–head ends there
          boom.peak shear at 1 m of heel–head | at 1 m of heel–head | no place: the peak shear is that of a whole bar, along A–B
          boom.place of peak shear | place of peak shear | a bar of the member: along A–B
          boom.peak moment along heel–tip | heel–tip | a bar of boom: heel–head
          drum.peak moment | peak moment | a member with bars; drum has none
          bom.peak moment | bom | the name of a member; the nearest is "boom"
          boom.place of peak moment along heel–head each | each | no each: the place of peak moment of equal parts is the same
          boom.moment | moment | a place on a bar of the member: at LENGTH of A–B
          boom.moment along heel–head | moment | a place on a bar of the member: at LENGTH of A–B
          boom.moment about heel at 1 m of heel–head | about heel | no point: this moment is about none
          boom.moment on jib at 1 m of heel–head | on jib | no body: only the force of a connection is asked on one
          boom.moment at 1 m of heel–tip | heel–tip | a bar of boom: heel–head
          drum.moment at 1 m of heel–tip | heel–tip | a member with bars; drum has none
          boom.moment at 5.001 m of heel–head | 5.001 m | 0 to 5 m, the length of bar heel–head
          """)
  void asksThatADeviceCannotAnswerAreRefused(String text, String piece, String wanted) {
    refused(() -> Ask.parse(text).check(yard()), piece, Ask.parse(text).text(), wanted);
  }

  @Test
  void everyProblemOfAnAskIsReportedTogether() {
    assertThatThrownBy(() -> Ask.parse("heel.x on jib about tip each in gsut").check(yard()))
        .hasMessage(
            """
            ask heel.x on jib about tip each in gsut: found "jib"; wanted: a body that heel joins: boom, ground
            ask heel.x on jib about tip each in gsut: found "about tip"; wanted: no point: this x is about none
            ask heel.x on jib about tip each in gsut: found "each"; wanted: a part with a count above 1
            ask heel.x on jib about tip each in gsut: found "gsut"; wanted: the name of a case; the nearest is "gust\"""");
  }

  @Test
  void advantageNeedsStatedForces() {
    Device plain =
        Device.named("ladder").point("A", 0, 0).point("B", 1, 0).member("m", "A", "B").build();
    refused(
        () -> Ask.parse("advantage").check(plain),
        "advantage",
        "advantage",
        "a device whose effort and resistance are stated");
    assertThat(Ask.all(plain))
        .extracting(Ask::text)
        .containsExactly(
            "m.peak normal",
            "m.peak shear",
            "m.peak moment",
            "outcome",
            "freedoms",
            "redundancy",
            "verdict",
            "friction factor");
  }

  @Test
  void aMultipleOfAllLoadsNeedsOneThatIsNoWeight() {
    Device plain =
        Device.named("ladder")
            .point("A", 0, 0)
            .point("B", 1, 0)
            .member("m", "A", "B")
            .weight("keg", "m", "B", 8)
            .sought("pull", "m", "A", Direction.UP)
            .build();
    refused(
        () -> Ask.parse("greatest multiple").check(plain),
        "multiple",
        "greatest multiple",
        "a device with a given load that is no weight, or multiple(LOAD)");
    Ask.parse("greatest multiple(keg)").check(plain);
  }

  @Test
  void allAsksOfADeviceAreAnsweredByIt() {
    Device yard = yard();
    assertThat(Ask.all(yard))
        .doesNotHaveDuplicates()
        .allSatisfy(ask -> ask.check(yard))
        .extracting(Ask::text)
        .startsWith("heel", "heel.x", "heel.y", "heel.size", "heel.direction", "elbow")
        .contains(
            "splice.couple",
            "brake.ratio",
            "jack.lowering",
            "base.offset",
            "crank.couple",
            "ballast.mass",
            "resultant.line",
            "centre.y",
            "advantage.ideal")
        .endsWith(
            "advantage",
            "advantage.efficiency",
            "advantage.return efficiency",
            "outcome",
            "freedoms",
            "redundancy",
            "verdict",
            "friction factor");
  }

  @Test
  void aStrutsWeightGivesACentre() {
    Device propped =
        Device.named("propped lid")
            .point("A", 0, 0)
            .point("B", 1, 0)
            .member("lid", "A", "B")
            .connect(new Strut("prop", End.of("lid", "A"), End.of("ground", "B"), 2))
            .build();
    assertThat(Ask.all(propped)).extracting(Ask::text).contains("centre.x", "centre.y");
  }

  @Test
  void aPlaceMeansTheMemberWhenALoadHasTheSameName() {
    Device twoThings =
        Device.named("ladder")
            .point("A", 0, 0)
            .point("B", 1, 0)
            .member("plank", "A", "B")
            .force("plank", "plank", "B", Vector.of(0, -1))
            .build();
    Ask.parse("plank.moment at 0.5 m of A–B").check(twoThings);
    Ask.parse("plank.y").check(twoThings);
    refused(
        () -> Ask.parse("plank.moment").check(twoThings),
        "moment",
        "plank.moment",
        "a point: moment about POINT");
  }
}
