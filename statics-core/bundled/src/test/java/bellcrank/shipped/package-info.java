/** What is shipped, tried from outside as a user has it: jars, and nothing else. */
@NullMarked
package bellcrank.shipped;

import org.jspecify.annotations.NullMarked;
