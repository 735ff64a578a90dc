package bellcrank.statics.drawing;

import bellcrank.statics.device.Joint;
import bellcrank.statics.device.Member;
import bellcrank.statics.equilibrium.BodyMotion;
import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Draws how bodies start to move: small arrows at the places that move fastest. */
record MotionShapes(Scene scene, View view, Places places) {

  private static final double LONGEST = 42;

  private static final int MOST = 2;

  /** How far an arrow is moved off what it would lie on. */
  private static final double ASIDE = 13;

  private record Step(Point place, Vector velocity) {}

  /** Draws the motion of these bodies. */
  void draw(Freedom freedom, List<String> bodies) {
    List<Step> steps = new ArrayList<>();
    for (BodyMotion motion : freedom.motions()) {
      if (bodies.contains(motion.body())) {
        steps.addAll(fastest(motion));
      }
    }
    double greatest = steps.stream().mapToDouble(step -> step.velocity.norm()).max().orElse(0);
    for (Step step : steps) {
      double share = step.velocity.norm() / greatest;
      if (share > 0.05) {
        draw(step, share);
      }
    }
  }

  private List<Step> fastest(BodyMotion motion) {
    List<String> points = new ArrayList<>();
    places
        .device()
        .body(motion.body())
        .ifPresent(
            body -> {
              if (body instanceof Member member) {
                points.addAll(member.points());
                points.addAll(member.outline());
              } else if (body instanceof Joint joint) {
                points.add(joint.at());
              }
            });
    return points.stream()
        .map(point -> places.of(motion.body(), point))
        .distinct()
        .map(place -> new Step(place, motion.velocityAt(place)))
        .sorted(Comparator.comparingDouble(step -> -step.velocity.norm()))
        .limit(MOST)
        .toList();
  }

  private void draw(Step step, double share) {
    Point at = view.at(step.place);
    Vector way = View.unit(step.velocity).times(14 + (LONGEST - 14) * share);
    Arrow arrow = new Arrow(at, at.plus(way));
    double least = Double.POSITIVE_INFINITY;
    for (double aside : new double[] {0, ASIDE, -ASIDE}) {
      Point tail = at.plus(View.unit(step.velocity).perpendicular().times(aside));
      double crowd = scene.crowding(tail, tail.plus(way)) + (aside == 0 ? 0 : 1);
      if (crowd < least) {
        least = crowd;
        arrow = new Arrow(tail, tail.plus(way));
      }
    }
    scene.add(Layer.FORCE, arrow.element("motion", Head.OPEN), arrow.box());
    scene.block(arrow.tail(), arrow.tip(), 2);
  }
}
