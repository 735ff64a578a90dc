/** How forces, answers and limits change with the numbers of a model; not exported. */
package bellcrank.statics.study.internal;
