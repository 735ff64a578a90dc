package bellcrank.statics.strength;

/**
 * What one part of a column carries.
 *
 * @param compression greatest compression along it in N, 0 or more
 * @param moment greatest bending moment along it in N·m, 0 or more
 * @param length distance of its ends in m, above 0
 * @param ends how it is held
 * @param sized section and material
 */
public record ColumnDemand(
    double compression, double moment, double length, ColumnEnds ends, Sized sized) {}
