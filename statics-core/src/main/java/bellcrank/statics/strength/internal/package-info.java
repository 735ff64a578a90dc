/** How the place where a check reaches its limit is found; not exported. */
@NullMarked
package bellcrank.statics.strength.internal;

import org.jspecify.annotations.NullMarked;
