package bellcrank.statics.drawing;

import java.util.ArrayList;
import java.util.List;

/** What was found to act on a free body while it is being read. */
final class Collected {

  final List<ActingForce> forces = new ArrayList<>();
  final List<SpreadForce> spreads = new ArrayList<>();
  final List<ActingCouple> couples = new ArrayList<>();
  final List<OpenForce> openForces = new ArrayList<>();
  final List<OpenCouple> openCouples = new ArrayList<>();
}
