package bellcrank.examples.file;

import java.util.Optional;

/**
 * What a part is made of, as far as a file states it. Stresses are checked only where both are
 * stated.
 *
 * @param section its cross-section
 * @param material name of a material of the file or of a row of the material table
 */
public record SizedStatement(Optional<SectionStatement> section, Optional<String> material) {}
