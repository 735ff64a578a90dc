package bellcrank.statics.explain;

import bellcrank.statics.device.Body;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Joint;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.BodyMotion;
import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;

/** Tells a motion, and where a strut would hold it. */
final class Motions {

  /** A point counts as faster only if it is so by more than this share. */
  private static final double FASTER = 1 + 1e-6;

  private Motions() {}

  static Step.Moves step(Device device, Pose pose, Freedom freedom) {
    Step.Moves best = new Step.Moves(freedom, "", Optional.empty(), Vector.ZERO);
    double fastest = 0;
    for (BodyMotion motion : freedom.motions()) {
      for (String point : points(device, motion.body())) {
        Vector velocity = motion.velocityAt(pose.frame(motion.body()).apply(device.point(point)));
        double speed = velocity.norm();
        if (speed > fastest * FASTER) {
          fastest = speed;
          best =
              new Step.Moves(freedom, motion.body(), Optional.of(point), velocity.times(1 / speed));
        }
      }
    }
    return best;
  }

  private static List<String> points(Device device, String name) {
    Optional<Body> body = device.body(name);
    if (body.isPresent() && body.get() instanceof Member member) {
      return member.points();
    }
    return body.isPresent() && body.get() instanceof Joint joint ? List.of(joint.at()) : List.of();
  }
}
