package bellcrank.statics.drawing;

import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.OptionalDouble;

/** Cuts ropes: each straight part that leaves the cut pulls with its tension. */
record RopeReader(Known known, Places places, Cut cut, CutForces out) {

  void reeving(Reeving rope) {
    OptionalDouble tension = known.value(rope.name(), Measure.TENSION);
    double step =
        switch (rope.hauling()) {
          case IDEAL -> 1;
          case RAISING -> rope.efficiency();
          case LOWERING -> 1 / rope.efficiency();
        };
    for (Strand strand : Strand.of(places, rope.stops())) {
      strand(rope.name(), strand, tension);
      tension = tension.isPresent() ? OptionalDouble.of(tension.getAsDouble() * step) : tension;
    }
  }

  void wrap(Wrap wrap) {
    List<Strand> strands = Strand.of(places, List.of(wrap.first(), wrap.post(), wrap.last()));
    strand(wrap.name(), strands.get(0), known.value(wrap.name(), Measure.TENSION));
    strand(wrap.name(), strands.get(1), known.value(wrap.name(), Measure.END_TENSION));
  }

  private void strand(String name, Strand strand, OptionalDouble tension) {
    boolean first = cut.has(strand.first().body());
    boolean second = cut.has(strand.second().body());
    if (strand.along().equals(Vector.ZERO)) {
      return;
    }
    if (first && !second) {
      pull(name, strand.first().body(), strand.start(), strand.along(), tension);
    } else if (second && !first) {
      pull(name, strand.second().body(), strand.end(), strand.along().times(-1), tension);
    }
  }

  private void pull(String name, String body, Point at, Vector along, OptionalDouble tension) {
    out.single(new Spot(name, body, at), name, Direction.from(along), tension);
  }
}
