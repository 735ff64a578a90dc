/**
 * Tests of devices: assertions about devices and their answers in the style of AssertJ, and a
 * factory that makes a suite of JUnit tests out of a folder of device files.
 *
 * <p>Only this package needs AssertJ and JUnit, and only in tests: both are optional dependencies,
 * so bring them along as you do for your other tests. {@link
 * bellcrank.statics.harness.ExpectedAnswer}, {@link bellcrank.statics.harness.CheckedAnswer} and
 * {@link bellcrank.statics.harness.LoadScale} do without them.
 */
@NullMarked
package bellcrank.statics.harness;

import org.jspecify.annotations.NullMarked;
