/**
 * Measurements of the equilibrium layer: ratios to a plain dense solve of the same device,
 * allocated bytes, and growth with the number of members.
 */
@org.jspecify.annotations.NullMarked
package bellcrank.benchmarks;
