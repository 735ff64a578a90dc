package bellcrank.statics.strength;

/**
 * What one part of a bar carries at a cut.
 *
 * @param normal axial force in N, tension positive
 * @param shear shear force in N
 * @param moment bending moment in N·m, positive where it stretches the bottom
 * @param sized section and material
 */
public record BarDemand(double normal, double shear, double moment, Sized sized) {}
