/**
 * A page of HTML that stands alone: chapters of words, tables and pictures, set by templates. It
 * knows nothing of statics.
 */
package bellcrank.examples.sheet;
