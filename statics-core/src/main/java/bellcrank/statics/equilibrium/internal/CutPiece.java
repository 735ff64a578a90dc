package bellcrank.statics.equilibrium.internal;

import java.util.List;

/**
 * A piece of a bar between places where forces enter, with its curves as powers of the distance
 * from its start, in SI units.
 *
 * @param bar number of the bar
 * @param start its start, in m from the bar's start
 * @param end its end, in m from the bar's start
 * @param normal N, N/m, N/m²
 * @param shear N, N/m, N/m²
 * @param moment N·m, N, N/m, N/m²
 * @param told whether statics fixes normal force, shear and moment, in this order
 * @param why why nothing can be told; empty if something can
 * @param isRing whether it is part of a ring, so that statics alone does not tell
 */
public record CutPiece(
    int bar,
    double start,
    double end,
    List<Double> normal,
    List<Double> shear,
    List<Double> moment,
    List<Boolean> told,
    String why,
    boolean isRing) {

  private static final List<Boolean> NOTHING = List.of(false, false, false);

  static CutPiece of(
      int bar,
      double start,
      double end,
      List<Double> normal,
      List<Double> shear,
      List<Double> moment,
      List<Boolean> told) {
    return new CutPiece(bar, start, end, normal, shear, moment, told, "", false);
  }

  static CutPiece unclear(int bar, double start, double end, String why) {
    return new CutPiece(bar, start, end, List.of(), List.of(), List.of(), NOTHING, why, false);
  }

  static CutPiece ring(int bar, double start, double end, String why) {
    return new CutPiece(bar, start, end, List.of(), List.of(), List.of(), NOTHING, why, true);
  }
}
