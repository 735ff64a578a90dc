/** Newton's method and continuation along the motion of a device; not exported. */
package bellcrank.statics.motion.internal;
