/**
 * Ten short programs to learn with, from one lever to a press with friction. Each describes a
 * device of the yard, asks for its forces, and draws it.
 */
package bellcrank.examples.programs;
