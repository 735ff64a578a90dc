/** How forces, answers and limits change with the numbers of a model; not exported. */
@NullMarked
package bellcrank.statics.study.internal;

import org.jspecify.annotations.NullMarked;
