/**
 * What changes when a number of a model is otherwise than stated: rough inputs, what follows from
 * them, and searches over them.
 */
package bellcrank.statics.study;
