package bellcrank.statics.motion;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Point;

/** What the forces on a device are like in size: a measure for what is rounding. */
final class LoadSizes {

  private LoadSizes() {}

  /** Sum of the sizes of all given loads in N, couples over the size of the device. */
  static double sum(Device device, LoadCase loadCase) {
    double sum = 0;
    for (Load load : device.loads()) {
      sum += Math.abs(loadCase.factor(load.name())) * size(device, load);
    }
    for (Connection connection : device.connections()) {
      if (connection instanceof Strut strut) {
        double factor = Math.abs(loadCase.factor(strut.name()));
        sum += factor * strut.mass() * device.gravity().norm();
      }
    }
    return sum;
  }

  private static double size(Device device, Load load) {
    if (load instanceof Force force) {
      return force.vector().norm();
    }
    if (load instanceof Weight weight) {
      return weight.mass() * device.gravity().norm();
    }
    if (load instanceof Couple couple) {
      return Math.abs(couple.moment()) / device.size();
    }
    if (load instanceof SpreadLoad spread) {
      Point from = device.point(spread.from());
      double greatest = Math.max(Math.abs(spread.start()), Math.abs(spread.end()));
      return greatest * from.distance(device.point(spread.to()));
    }
    if (load instanceof Spring spring) {
      return spring.stiffness() * device.size();
    }
    return load instanceof TorsionSpring spring ? spring.stiffness() / device.size() : 0;
  }
}
