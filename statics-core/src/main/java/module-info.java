/**
 * Planar statics of pinned-lever devices: model, equilibrium, answers.
 *
 * <p>All quantities are SI inside (m, N, N·m, kg, Pa, rad); x points right, y up; angles and
 * moments are positive counter-clockwise. Units are converted only at the edge. <a
 * href="{@docRoot}/bellcrank.statics/bellcrank/statics/device/doc-files/signs.html">The page of
 * signs</a> shows all of them in figures.
 */
@org.jspecify.annotations.NullMarked
module bellcrank.statics {
  // EJML and Hipparchus carry no module name: these names come from the jar file names.
  requires ejml.core;
  requires ejml.ddense;
  requires ejml.dsparse;
  requires hipparchus.core;
  requires hipparchus.optim;
  requires java.xml;
  requires static org.jspecify;
  // For the harness alone, in tests. Not transitive: a user's module without them would not
  // compile.
  requires static org.assertj.core;
  requires static org.junit.jupiter.api;

  exports bellcrank.statics.geometry;
  exports bellcrank.statics.units;
  exports bellcrank.statics.device;
  exports bellcrank.statics.equilibrium;
  exports bellcrank.statics.ground;
  exports bellcrank.statics.limits;
  exports bellcrank.statics.motion;
  exports bellcrank.statics.strength;
  exports bellcrank.statics.study;
  exports bellcrank.statics.drawing;
  exports bellcrank.statics.explain;
  exports bellcrank.statics.harness;
}
