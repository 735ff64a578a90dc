/**
 * What changes when a number of a model is otherwise than stated: rough inputs, what follows from
 * them, and searches over them.
 */
@NullMarked
package bellcrank.statics.study;

import org.jspecify.annotations.NullMarked;
