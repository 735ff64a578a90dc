package bellcrank.examples.report;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.util.Locale;
import java.util.Optional;

/**
 * Says what a load is and where it acts.
 *
 * @param device the device
 * @param stated writes the values
 */
record LoadWords(Device device, Stated stated) {

  // chains of tests, since Java 17 has no switch over the kinds
  String what(Load load) {
    if (load instanceof Force force) {
      return force(force.vector());
    }
    if (load instanceof Couple couple) {
      return couple(couple.moment());
    }
    if (load instanceof SpreadLoad spread) {
      return spread(spread);
    }
    if (load instanceof Weight weight) {
      Vector pull = device.gravity().times(weight.mass());
      String mass = stated.text(weight.mass(), Dimension.MASS);
      return "weight " + (pull.norm() == 0 ? "" : force(pull) + ", ") + "mass " + mass;
    }
    if (load instanceof Spring spring) {
      return "spring of "
          + stated.text(spring.stiffness(), Dimension.FORCE_PER_LENGTH)
          + ", free length "
          + stated.text(spring.freeLength(), Dimension.LENGTH);
    }
    if (load instanceof TorsionSpring spring) {
      return "torsion spring of "
          + stated.text(spring.stiffness(), Dimension.MOMENT_PER_ANGLE)
          + ", turned by "
          + stated.text(spring.turned(), Dimension.ANGLE);
    }
    Sought sought = (Sought) load;
    String want = sought.want().name().toLowerCase(Locale.ROOT);
    return "sought: " + want + sought.direction().map(way -> ", " + Stated.way(way)).orElse("");
  }

  String where(Load load) {
    if (load instanceof Force force) {
      return on(force.body(), Optional.of(force.at()));
    }
    if (load instanceof Couple couple) {
      return on(couple.member(), Optional.empty());
    }
    if (load instanceof SpreadLoad spread) {
      return "on " + spread.member() + " from " + spread.from() + " to " + spread.to();
    }
    if (load instanceof Weight weight) {
      return on(weight.body(), weight.at())
          + (weight.at().isEmpty() ? ", spread over its bars" : "");
    }
    if (load instanceof Spring spring) {
      return "from " + end(spring.first()) + " to " + end(spring.second());
    }
    if (load instanceof TorsionSpring spring) {
      return "on " + spring.body() + " against " + spring.other();
    }
    Sought sought = (Sought) load;
    return on(sought.body(), sought.at()) + sought.to().map(to -> " to " + to).orElse("");
  }

  private String force(Vector vector) {
    double size = vector.norm();
    String text = stated.text(size, Dimension.FORCE);
    return size == 0 ? text : text + " " + DirectionWords.of(vector.x(), vector.y());
  }

  private String couple(double moment) {
    return "couple of "
        + stated.text(Math.abs(moment), Dimension.MOMENT)
        + (moment == 0 ? "" : " " + DirectionWords.turning(moment));
  }

  private String spread(SpreadLoad spread) {
    String start = stated.text(spread.start(), Dimension.FORCE_PER_LENGTH);
    String end = stated.text(spread.end(), Dimension.FORCE_PER_LENGTH);
    return "spread, "
        + (start.equals(end) ? start : start + " to " + end)
        + spread
            .direction()
            .map(way -> " " + Stated.way(way))
            .orElse(" square to the bar, to its left")
        + (spread.per() == SpreadLoad.Per.HORIZONTAL ? ", per length along the level" : "");
  }

  private static String on(String body, Optional<String> at) {
    return "on " + body + at.filter(point -> !point.equals(body)).map(p -> " at " + p).orElse("");
  }

  private static String end(End end) {
    return end.body() + " at " + end.at();
  }
}
