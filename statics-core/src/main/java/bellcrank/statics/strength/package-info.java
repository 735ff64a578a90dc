/**
 * What gives first: sections, materials and joint details by part name, stresses and other checks,
 * and the multiple of a load at which each reaches its limit.
 */
@NullMarked
package bellcrank.statics.strength;

import org.jspecify.annotations.NullMarked;
