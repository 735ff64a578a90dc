/** The programs behind the limits; the only place that knows the library that solves them. */
package bellcrank.statics.limits.internal;
