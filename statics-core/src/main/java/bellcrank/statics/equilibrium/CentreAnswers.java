package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Stretch;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Subject;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.util.List;

/** Finds centres of gravity from the stated weights. */
final class CentreAnswers {

  private final Device device;
  private final Pose pose;

  CentreAnswers(Device device, Pose pose) {
    this.device = device;
    this.pose = pose;
  }

  Answer answer(Subject.Centre centre, Ask ask) {
    double mass = 0;
    Vector sum = Vector.ZERO;
    for (Load load : device.loads()) {
      if (load instanceof Weight weight
          && (centre.bodies().isEmpty() || centre.bodies().contains(weight.body()))) {
        Point at =
            pose.frame(weight.body())
                .apply(weight.at().map(device::point).orElseGet(() -> middle(weight.body())));
        mass += weight.mass();
        sum = sum.plus(Point.ORIGIN.to(at).times(weight.mass()));
      }
    }
    if (centre.bodies().isEmpty()) {
      for (Connection connection : device.connections()) {
        if (connection instanceof Strut strut) {
          for (End end : List.of(strut.first(), strut.second())) {
            Point at = pose.frame(end.body()).apply(device.point(end.at()));
            mass += strut.mass() / 2;
            sum = sum.plus(Point.ORIGIN.to(at).times(strut.mass() / 2));
          }
        }
      }
    }
    if (mass == 0) {
      return Values.notDefined("no weight is stated, so there is no centre of gravity");
    }
    Point found = Point.of(sum.x() / mass, sum.y() / mass);
    if (ask.measure() == Measure.X) {
      return new Answer.Value(found.x(), Dimension.LENGTH);
    }
    if (ask.measure() == Measure.Y) {
      return new Answer.Value(found.y(), Dimension.LENGTH);
    }
    Stretch along = ask.stretch().orElseThrow();
    Point start = device.point(along.start());
    Direction sense = Direction.from(start, device.point(along.end()));
    Vector r = start.to(found);
    return new Answer.Value(r.x() * sense.x() + r.y() * sense.y(), Dimension.LENGTH);
  }

  private Point middle(String body) {
    return device.middleOfBars((Member) device.body(body).orElseThrow());
  }
}
