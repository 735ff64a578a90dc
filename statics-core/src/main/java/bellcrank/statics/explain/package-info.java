/**
 * The worked solution: which part is cut free, which equation is written for it and why, what it
 * yields, in as few equations as can be found; as data, and as text, Markdown, LaTeX or HTML.
 */
@NullMarked
package bellcrank.statics.explain;

import org.jspecify.annotations.NullMarked;
