package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Side;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.study.MovingLoad.Leg;
import bellcrank.statics.study.Train.Wheel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Laws of moving loads and envelopes, on random crooked beams. */
class MovingLoadProperties {

  private static final double CLOSE = 1e-8;

  /** A crooked beam of several bars with a pin, a roller and loads. */
  private static final class Crooked {
    final Random random;
    final Device device;
    final List<String> names = new ArrayList<>();

    Crooked(long seed) {
      random = new Random(seed);
      DeviceBuilder builder = Device.named("crooked beam");
      int count = 3 + random.nextInt(3);
      for (int k = 0; k < count; k++) {
        names.add("p" + k);
        builder.point("p" + k, k * 1.5 + random.nextDouble(), random.nextDouble() * 2 - 1);
      }
      builder
          .member("beam", names.toArray(new String[0]))
          .pin("pin", "p" + random.nextInt(count / 2), "beam", "ground")
          .roller("roller", "p" + (count - 1 - random.nextInt(count / 2)), "beam", "ground", up());
      for (int k = 0; k < 3; k++) {
        builder.force("f" + k, "beam", "p" + random.nextInt(count), force());
      }
      device = builder.build();
    }

    Direction up() {
      return Direction.ofAngle(Math.PI / 2 + random.nextDouble() - 0.5);
    }

    Vector force() {
      return Vector.of(random.nextDouble() * 400 - 200, random.nextDouble() * 400 - 200);
    }

    List<Leg> way() {
      int first = random.nextInt(names.size() - 1);
      List<Leg> way = new ArrayList<>();
      for (int k = first; k < names.size() - 1 && (k == first || random.nextBoolean()); k++) {
        way.add(new Leg("beam", names.get(k), names.get(k + 1)));
      }
      return way;
    }

    Ask ask() {
      int choice = random.nextInt(6);
      if (choice == 0) {
        return Ask.parse("pin.x on beam");
      }
      if (choice == 1) {
        return Ask.parse("pin.y on beam");
      }
      if (choice == 2) {
        return Ask.parse("roller.normal");
      }
      int bar = random.nextInt(names.size() - 1);
      Point from = device.point(names.get(bar));
      double length = from.distance(device.point(names.get(bar + 1)));
      Measure measure = List.of(Measure.NORMAL, Measure.SHEAR, Measure.MOMENT).get(choice - 3);
      return Ask.of("beam", measure)
          .atDistance(length * random.nextDouble(), names.get(bar), names.get(bar + 1));
    }
  }

  @Property(tries = 150)
  void lineTimesLoadIsTheBalance(@ForAll long seed) {
    Crooked beam = new Crooked(seed);
    LoadCase loadCase = new LoadCase("storm", Map.of("f0", 1.4, "f1", -0.5), 1.2);
    MovingLoad load = MovingLoad.of(beam.device, loadCase, Pose.DRAWN, "f0", beam.way());
    Ask ask = beam.ask();
    InfluenceLine line = (InfluenceLine) load.influence(ask);
    for (int k = 0; k < 8; k++) {
      double place = load.length() * beam.random.nextDouble();
      double found = load.balance(place).number(ask.text()).orElseThrow();
      double room = CLOSE * (Math.abs(line.base()) + Math.abs(line.load()) * line.largest());
      assertThat(line.value(place, Side.AFTER)).isCloseTo(found, within(room));
      assertThat(found).isBetween(line.least().value() - room, line.greatest().value() + room);
    }
  }

  /** No step of a train on a fine grid goes beyond what its extremes say. */
  @Property(tries = 60)
  void noPlaceOfATrainIsWorseThanItsExtremes(@ForAll long seed) {
    Crooked beam = new Crooked(seed);
    MovingLoad load = MovingLoad.of(beam.device, LoadCase.ALL_LOADS, Pose.DRAWN, "f0", beam.way());
    InfluenceLine line = (InfluenceLine) load.influence(beam.ask());
    Train train =
        new Train(
            List.of(
                new Wheel(100 * beam.random.nextDouble(), 0),
                new Wheel(300 * beam.random.nextDouble() - 50, 0.7),
                new Wheel(100, 0.7 + beam.random.nextDouble())));
    double greatest = train.greatest(line).at().value();
    double least = train.least(line).at().value();
    double end = line.length() + train.length();
    for (int k = 1; k < 500; k++) {
      double lead = end * k / 500;
      // between wheels that are further apart than the way is long, the train is not there
      if (train.wheels().stream().anyMatch(wheel -> isOn(line, lead - wheel.behind()))) {
        assertThat(train.value(line, lead, Side.AFTER)).isBetween(least - 1e-6, greatest + 1e-6);
      } else {
        assertThat(train.value(line, lead, Side.AFTER)).isEqualTo(line.base());
      }
    }
  }

  private static boolean isOn(InfluenceLine line, double place) {
    return place >= 0 && place < line.length();
  }

  @Property(tries = 60)
  void envelopeHoldsEveryCase(@ForAll long seed) {
    Crooked beam = new Crooked(seed);
    List<LoadCase> cases = new ArrayList<>();
    for (int k = 0; k < 5; k++) {
      Map<String, Double> factors = new LinkedHashMap<>();
      for (int load = 0; load < 3; load++) {
        factors.put("f" + load, 3 * beam.random.nextDouble() - 1);
      }
      cases.add(new LoadCase("case " + k, factors, 1));
    }
    Ask ask = beam.ask();
    Model model = Model.of(beam.device);
    Envelope.Row all = Envelope.of(model, cases, List.of(ask)).rows().get(0);
    double least = all.least().orElseThrow().value();
    double greatest = all.greatest().orElseThrow().value();
    boolean leastIsACase = false;
    boolean greatestIsACase = false;
    for (LoadCase one : cases) {
      double value =
          Envelope.of(model, List.of(one), List.of(ask))
              .rows()
              .get(0)
              .least()
              .orElseThrow()
              .value();
      assertThat(value).isBetween(least, greatest);
      leastIsACase |= value == least && one.name().equals(all.least().orElseThrow().loadCase());
      greatestIsACase |=
          value == greatest && one.name().equals(all.greatest().orElseThrow().loadCase());
    }
    assertThat(leastIsACase && greatestIsACase).isTrue();
  }
}
