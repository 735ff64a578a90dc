package bellcrank.examples.file;

import bellcrank.statics.ground.Bearing;
import bellcrank.statics.ground.Cleat;
import bellcrank.statics.ground.Drained;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.ground.Presumptive;
import bellcrank.statics.ground.SoilRow;
import bellcrank.statics.ground.SoilTable;
import bellcrank.statics.ground.Undrained;
import bellcrank.statics.units.Dimension;
import java.util.Optional;

/** Writes what is under the contact bases. */
final class GroundText {

  private final AmountText amounts;

  GroundText(AmountText amounts) {
    this.amounts = amounts;
  }

  String written(Foundation foundation) {
    Flow flow = new Flow().put("length", amounts.bare(foundation.length(), Dimension.LENGTH));
    foundation.bearing().ifPresent(bearing -> bearing(flow, bearing));
    if (foundation.adhesion() != 0) {
      flow.put("adhesion", amounts.bare(foundation.adhesion(), Dimension.PRESSURE));
    }
    foundation.cleat().ifPresent(cleat -> flow.put("cleat", cleat(cleat)));
    return flow.written();
  }

  private void bearing(Flow flow, Bearing bearing) {
    if (bearing instanceof Drained drained) {
      flow.put("drained", drained(drained));
    } else if (bearing instanceof Undrained undrained) {
      flow.put("undrained", undrained(undrained));
    } else if (bearing instanceof Presumptive presumptive) {
      presumptive(flow, presumptive);
    }
  }

  private void presumptive(Flow flow, Presumptive bearing) {
    Optional<String> soil =
        SoilTable.rows().stream()
            .filter(row -> row.pressure().isSingle() && row.presumptive().equals(bearing))
            .map(SoilRow::name)
            .findFirst();
    if (soil.isPresent()) {
      flow.text("soil", soil);
      return;
    }
    flow.put("pressure", amounts.bare(bearing.pressure(), Dimension.PRESSURE));
    if (!bearing.source().equals(GroundReader.STATED)) {
      flow.text("source", bearing.source());
    }
  }

  private String drained(Drained drained) {
    Flow flow = new Flow().put("friction angle", angle(drained.frictionAngle()));
    pressure(flow, "cohesion", drained.cohesion());
    flow.put("weight", weight(drained.weight()));
    pressure(flow, "overburden", drained.overburden());
    return flow.written();
  }

  private String undrained(Undrained undrained) {
    Flow flow = new Flow().put("strength", amounts.bare(undrained.strength(), Dimension.PRESSURE));
    pressure(flow, "overburden", undrained.overburden());
    return flow.written();
  }

  private String cleat(Cleat cleat) {
    Flow flow =
        new Flow()
            .put("depth", amounts.bare(cleat.depth(), Dimension.LENGTH))
            .put("friction angle", angle(cleat.frictionAngle()));
    pressure(flow, "cohesion", cleat.cohesion());
    return flow.put("weight", weight(cleat.weight())).written();
  }

  /** A pressure that is none if left out. */
  private void pressure(Flow flow, String key, double pressure) {
    if (pressure != 0) {
      flow.put(key, amounts.bare(pressure, Dimension.PRESSURE));
    }
  }

  private String angle(double angle) {
    return amounts.withUnit(angle, Dimension.ANGLE);
  }

  private String weight(double weight) {
    return amounts.bare(weight, Dimension.FORCE_PER_VOLUME);
  }
}
