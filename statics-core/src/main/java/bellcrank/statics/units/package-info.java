/**
 * Units of measurement and quantities written as text: the edge at which everything becomes SI.
 *
 * <p>Inside the library every number is SI (m, rad, N, kg, N·m, N/m, Pa, m/s²). A {@link
 * bellcrank.statics.units.Unit} carries the exact factor to SI and its source, a {@link
 * bellcrank.statics.units.Quantity} is read from text such as {@code 15 lbf} or {@code 4 ft 2 in}
 * and written back rounded to significant digits, and a {@link bellcrank.statics.units.UnitSystem}
 * says which unit a bare number has. Text that cannot be read without a guess is refused with a
 * {@link bellcrank.statics.units.QuantityException} that says what would be accepted.
 *
 * <p>Mass and force are kept apart: {@code lb} and {@code kg} are masses, {@code lbf} and {@code
 * kgf} are forces. Symbols are case-sensitive. Nothing here depends on the locale.
 */
@NullMarked
package bellcrank.statics.units;

import org.jspecify.annotations.NullMarked;
