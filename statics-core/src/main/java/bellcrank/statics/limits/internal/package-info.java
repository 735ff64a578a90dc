/** The programs behind the limits; the only place that knows the library that solves them. */
@NullMarked
package bellcrank.statics.limits.internal;

import org.jspecify.annotations.NullMarked;
