/**
 * Follows a device with one freedom through its travel: poses, where the travel ends and why, and
 * how any answer changes on the way.
 */
@NullMarked
package bellcrank.statics.motion;

import org.jspecify.annotations.NullMarked;
