/** The main program of Bellcrank and short programs to copy from. */
package bellcrank.examples;
