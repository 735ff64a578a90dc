package bellcrank.statics.study.internal;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Stretch;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Subject;
import bellcrank.statics.device.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what depends on places and given loads alone: resultants, centres, lengths. */
final class DualLoadReader {

  private final DualDevice at;
  private final DualEquations equations;

  DualLoadReader(DualDevice at, DualEquations equations) {
    this.at = at;
    this.equations = equations;
  }

  Optional<Dual> resultant(Subject.Resultant subject, Ask ask) {
    List<DualAction> loads =
        equations.given.stream()
            .filter(one -> one.body() >= 0)
            .filter(one -> subject.loads().isEmpty() || subject.loads().contains(one.owner()))
            .toList();
    DualVector about = ask.about().map(at::point).orElse(DualVector.ZERO);
    DualSum sum = DualSum.of(loads, about);
    Dual size = sum.force().norm();
    if (ask.measure() == Measure.ARM) {
      return size.value() == 0 ? Optional.empty() : Optional.of(sum.moment().over(size));
    }
    if (ask.measure() == Measure.DISTANCE) {
      return ask.stretch().flatMap(stretch -> crossing(stretch, DualSum.of(loads, start(stretch))));
    }
    return sum.measure(ask.measure());
  }

  private DualVector start(Stretch stretch) {
    return at.point(stretch.start());
  }

  private DualVector sense(Stretch stretch) {
    return at.point(stretch.end()).minus(start(stretch)).unit();
  }

  /** Where the line of action crosses a line: s·(u × F) is the moment about the line's start. */
  private Optional<Dual> crossing(Stretch stretch, DualSum about) {
    Dual lever = sense(stretch).cross(about.force());
    return lever.value() == 0 ? Optional.empty() : Optional.of(about.moment().over(lever));
  }

  Optional<Dual> centre(Subject.Centre centre, Ask ask) {
    Dual mass = Dual.ZERO;
    DualVector sum = DualVector.ZERO;
    for (Load load : at.device.loads()) {
      boolean counts =
          load instanceof Weight weight
              && (centre.bodies().isEmpty() || centre.bodies().contains(weight.body()));
      if (counts) {
        Weight weight = (Weight) load;
        Dual own = at.number("mass", weight.name(), weight.mass());
        DualVector place =
            weight.at().isPresent() ? at.point(weight.at().get()) : at.middleOfBars(weight.body());
        mass = mass.plus(own);
        sum = sum.plus(place.times(own));
      }
    }
    if (centre.bodies().isEmpty()) {
      for (Connection connection : at.device.connections()) {
        if (connection instanceof Strut strut) {
          Dual half = at.number("mass", strut.name(), strut.mass()).times(0.5);
          for (End end : List.of(strut.first(), strut.second())) {
            mass = mass.plus(half);
            sum = sum.plus(at.point(end.at()).times(half));
          }
        }
      }
    }
    if (mass.value() == 0) {
      return Optional.empty();
    }
    DualVector found = new DualVector(sum.x().over(mass), sum.y().over(mass));
    return switch (ask.measure()) {
      case X -> Optional.of(found.x());
      case Y -> Optional.of(found.y());
      default -> ask.stretch().map(along -> found.minus(start(along)).dot(sense(along)));
    };
  }

  Optional<Dual> length(Connection connection) {
    if (connection instanceof Reeving reeving) {
      return Optional.of(rope(reeving));
    }
    List<String> places = connection.places();
    return Optional.of(at.point(places.get(1)).minus(at.point(places.get(0))).norm());
  }

  /** Straight parts and the arcs on sheaves between them, as {@code PlaceAnswers} has them. */
  private Dual rope(Reeving reeving) {
    List<Stop> stops = reeving.stops();
    Dual sum = Dual.ZERO;
    List<Dual> angles = new ArrayList<>();
    for (int k = 0; k + 1 < stops.size(); k++) {
      DualVector way = at.point(stops.get(k + 1).at()).minus(at.point(stops.get(k).at()));
      Dual gap =
          DualLaws.radius(at, reeving, stops.get(k))
              .minus(DualLaws.radius(at, reeving, stops.get(k + 1)));
      Dual straight = DualLaws.tangent(way, gap);
      sum = sum.plus(straight);
      angles.add(Dual.angle(way.x(), way.y()).plus(Dual.angle(straight, gap)));
    }
    for (int k = 1; k < angles.size(); k++) {
      Stop sheave = stops.get(k);
      Dual turned = angles.get(k).minus(angles.get(k - 1)).times(sheave.turn().sign());
      double round = 2 * Math.PI * Math.floor(turned.value() / (2 * Math.PI));
      Dual arc = new Dual(turned.value() - round, turned.rate());
      Dual radius = DualLaws.radius(at, reeving, sheave).times(sheave.turn().sign());
      sum = sum.plus(radius.times(arc));
    }
    return sum;
  }
}
