/** Answers of device files as a page of text, as JSON, and as a check of what a file expects. */
package bellcrank.examples.report;
