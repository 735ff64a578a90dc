/** Device files as suites of tests. */
package bellcrank.examples.harness;
