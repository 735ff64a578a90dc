package bellcrank.examples.file;

import bellcrank.statics.limits.Variation;
import bellcrank.statics.study.Model;
import java.util.Optional;

/**
 * What studies of a file may be about.
 *
 * @param model the device with its ground and sizing
 * @param driving the loads that grow until something gives
 * @param travel how the device is driven
 */
record FileParts(Model model, Optional<Variation.Multiple> driving, Optional<TravelPlan> travel) {}
