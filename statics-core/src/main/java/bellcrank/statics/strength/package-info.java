/**
 * What gives first: sections, materials and joint details by part name, stresses and other checks,
 * and the multiple of a load at which each reaches its limit.
 */
package bellcrank.statics.strength;
