/**
 * Assembly, order and solution of the equilibrium equations; the only place that sees EJML. Inside,
 * lengths are measured from the device's middle in units of its size, so that every coefficient is
 * of order one.
 */
@NullMarked
package bellcrank.statics.equilibrium.internal;

import org.jspecify.annotations.NullMarked;
