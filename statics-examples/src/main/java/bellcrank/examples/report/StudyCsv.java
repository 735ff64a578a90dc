package bellcrank.examples.report;

import bellcrank.statics.device.Side;
import bellcrank.statics.study.Influence;
import bellcrank.statics.study.InfluenceLine;
import bellcrank.statics.study.Percentile;
import bellcrank.statics.study.Sampled;
import bellcrank.statics.study.Samples;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Samples or influence lines of a file as comma-separated values (RFC 4180): of samples the value
 * that each per cent of them is at or below; else a row for each corner of each influence line, two
 * where it jumps.
 */
public final class StudyCsv {

  private StudyCsv() {}

  /**
   * Writes the table.
   *
   * @param answer the answers to a file
   * @param units units of the values
   * @return lines with line ends; empty if the file has neither samples nor moving loads
   */
  public static Optional<String> of(FileAnswer answer, UnitSystem units) {
    Optional<StudyAnswer> study = answer.study();
    if (study.isEmpty()) {
      return Optional.empty();
    }
    if (study.get().samples().isPresent()) {
      return Optional.of(percentiles(study.get().samples().get(), units));
    }
    List<StudyAnswer.Moved> moved = study.get().moved();
    return moved.isEmpty() ? Optional.empty() : Optional.of(lines(moved, units));
  }

  private static String percentiles(Samples samples, UnitSystem units) {
    List<Sampled> told = samples.figures().stream().filter(one -> one.count() > 0).toList();
    StringBuilder text = new StringBuilder();
    List<String> heads = new ArrayList<>(List.of("samples up to (%)"));
    told.forEach(
        one -> heads.add(TravelCsv.head(one.figure().text(), units.unit(one.dimension()))));
    TravelCsv.line(text, heads);
    for (int percent = 1; percent < 100; percent++) {
      List<String> cells = new ArrayList<>(List.of(Integer.toString(percent)));
      for (Sampled one : told) {
        Percentile percentile = one.percentile(percent / 100.0).orElseThrow();
        cells.add(TravelCsv.number(percentile.si(), units.unit(one.dimension())));
      }
      TravelCsv.line(text, cells);
    }
    return text.toString();
  }

  private static String lines(List<StudyAnswer.Moved> all, UnitSystem units) {
    Unit along = units.unit(Dimension.LENGTH);
    StringBuilder text = new StringBuilder();
    TravelCsv.line(
        text,
        List.of(
            "moving load",
            "answer",
            TravelCsv.head("place", along),
            "with the load there",
            "unit"));
    for (StudyAnswer.Moved moved : all) {
      for (Influence influence : moved.influences()) {
        if (influence instanceof InfluenceLine line) {
          rows(text, moved.plan().name(), line, along, units.unit(line.dimension()));
        }
      }
    }
    return text.toString();
  }

  private static void rows(
      StringBuilder text, String name, InfluenceLine line, Unit along, Unit unit) {
    for (double corner : line.corners()) {
      List<Side> sides =
          line.jumpsAt(corner) ? List.of(Side.BEFORE, Side.AFTER) : List.of(Side.BEFORE);
      for (Side side : sides) {
        TravelCsv.line(
            text,
            List.of(
                name,
                line.ask().text(),
                TravelCsv.number(corner, along),
                TravelCsv.number(line.value(corner, side), unit),
                unit.symbol()));
      }
    }
  }
}
