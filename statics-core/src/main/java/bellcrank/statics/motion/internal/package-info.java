/** Newton's method and continuation along the motion of a device; not exported. */
@NullMarked
package bellcrank.statics.motion.internal;

import org.jspecify.annotations.NullMarked;
