package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;

/**
 * Gives each label a place at which it overlaps no other label and crosses as little of the picture
 * as can be. A label that finds no room near by goes outwards, ring by ring, until it does.
 */
final class LabelPlacer {

  /** Directions that are tried on a ring. */
  private static final int DIRECTIONS = 16;

  /** Distance of the rings. */
  private static final double STEP = 11;

  /** Rings that are always tried, since they may cross less. */
  private static final int NEAR_RINGS = 9;

  /** What crossing anything costs at least. */
  private static final double CROSSING = 8;

  /** What it costs for a leader to cross a label. */
  private static final double LEADER_OVER_LABEL = 60;

  /** What a unit of distance costs. */
  private static final double DISTANCE = 0.45;

  private final List<Obstacle> obstacles;
  private final List<PlacedLabel> placed = new ArrayList<>();

  LabelPlacer(List<Obstacle> obstacles) {
    this.obstacles = new ArrayList<>(obstacles);
  }

  List<PlacedLabel> place(List<Label> labels) {
    for (Label label : labels) {
      PlacedLabel best = best(label);
      placed.add(best);
      if (best.hasLeader()) {
        obstacles.add(new Obstacle(label.anchor(), best.leaderEnd(), 1));
      }
    }
    return List.copyOf(placed);
  }

  private PlacedLabel best(Label label) {
    Choice choice = new Choice(label);
    double halfWidth = label.halfWidth();
    List<Label.Try> tries = label.tries();
    for (int i = 0; i < tries.size(); i++) {
      choice.offer(label.at(tries.get(i), halfWidth), 1.5 * i);
    }
    for (int ring = 1; ring <= NEAR_RINGS || !choice.found(); ring++) {
      double gap = STEP * ring;
      for (int k = 0; k < DIRECTIONS; k++) {
        double angle = 2 * Math.PI * k / DIRECTIONS;
        Vector towards = Vector.of(Math.cos(angle), Math.sin(angle));
        choice.offer(
            label.at(new Label.Try(label.anchor(), towards, gap), halfWidth), 6 + DISTANCE * gap);
      }
    }
    return new PlacedLabel(label, choice.box);
  }

  private final class Choice {
    private final Label label;
    private Room box;
    private double least = Double.POSITIVE_INFINITY;

    Choice(Label label) {
      this.label = label;
      box = Room.at(label.anchor());
    }

    boolean found() {
      return least < Double.POSITIVE_INFINITY;
    }

    void offer(Room candidate, double cost) {
      if (cost < least) {
        double total = cost + cost(new PlacedLabel(label, candidate), least - cost);
        if (total < least) {
          least = total;
          box = candidate;
        }
      }
    }
  }

  /** What a place costs beyond its distance; it is not counted further than a bound. */
  private double cost(PlacedLabel candidate, double bound) {
    Room box = candidate.box();
    Point anchor = candidate.label().anchor();
    boolean leader = candidate.hasLeader();
    double cost = 0;
    for (PlacedLabel other : placed) {
      if (box.overlaps(other.box())) {
        return Double.POSITIVE_INFINITY;
      }
      if (leader && other.box().lengthInside(anchor, candidate.leaderEnd()) > 0) {
        cost += LEADER_OVER_LABEL;
      }
    }
    for (Obstacle obstacle : obstacles) {
      double inside = box.lengthInside(obstacle.start(), obstacle.end());
      if (inside > 0) {
        cost += obstacle.weight() * (CROSSING + inside);
      }
      if (cost >= bound) {
        return cost;
      }
    }
    return cost;
  }
}
