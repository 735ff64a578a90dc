/** How the place where a check reaches its limit is found; not exported. */
package bellcrank.statics.strength.internal;
