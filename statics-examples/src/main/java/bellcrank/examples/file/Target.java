package bellcrank.examples.file;

import java.util.Optional;

/**
 * What a load acts on.
 *
 * @param body name of a member, joint or pin
 * @param at name of the point, if stated or implied
 */
record Target(String body, Optional<String> at) {}
