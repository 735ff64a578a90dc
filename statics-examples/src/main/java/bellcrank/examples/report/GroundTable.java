package bellcrank.examples.report;

import bellcrank.statics.ground.Bearing;
import bellcrank.statics.ground.Cleat;
import bellcrank.statics.ground.Drained;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.ground.Presumptive;
import bellcrank.statics.ground.Undrained;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * What was stated of the ground under contact bases, in words.
 *
 * @param foundations what is under the bases
 * @param stated writes the values
 */
record GroundTable(List<Foundation> foundations, Stated stated) {

  void write(Page page) {
    if (foundations.isEmpty()) {
      return;
    }
    Table table =
        new Table()
            .column("base", Table.Kind.WORDS)
            .column(stated.head("length", Dimension.LENGTH), Table.Kind.NUMBERS)
            .column("ground", Table.Kind.WORDS);
    for (Foundation one : foundations) {
      List<String> words = new ArrayList<>();
      words.add(one.bearing().map(this::bearing).orElse("ground that does not give"));
      if (one.adhesion() > 0) {
        words.add("adhesion " + pressure(one.adhesion()));
      }
      one.cleat().ifPresent(cleat -> words.add(cleat(cleat)));
      table.row(
          List.of(
              one.base(), stated.number(one.length(), Dimension.LENGTH), String.join("; ", words)));
    }
    page.heading("Ground under the bases");
    page.table(table);
  }

  // a chain of tests, since Java 17 has no switch over the kinds
  private String bearing(Bearing bearing) {
    if (bearing instanceof Drained soil) {
      return "drained: friction angle "
          + angle(soil.frictionAngle())
          + ", cohesion "
          + pressure(soil.cohesion())
          + ", weight "
          + weight(soil.weight())
          + ", overburden "
          + pressure(soil.overburden());
    }
    if (bearing instanceof Undrained soil) {
      return "undrained: strength "
          + pressure(soil.strength())
          + ", overburden "
          + pressure(soil.overburden());
    }
    return "bears " + pressure(((Presumptive) bearing).pressure());
  }

  private String cleat(Cleat cleat) {
    return "cleat "
        + stated.text(cleat.depth(), Dimension.LENGTH)
        + " deep in soil with friction angle "
        + angle(cleat.frictionAngle())
        + ", cohesion "
        + pressure(cleat.cohesion())
        + ", weight "
        + weight(cleat.weight());
  }

  private String angle(double si) {
    return stated.text(si, Dimension.ANGLE);
  }

  private String pressure(double si) {
    return stated.text(si, Dimension.PRESSURE);
  }

  private String weight(double si) {
    return stated.text(si, Dimension.FORCE_PER_VOLUME);
  }
}
