package bellcrank.statics.strength;

/**
 * The section and the material of a bar or strut.
 *
 * @param section the section of one of its parallel parts
 * @param material what it is made of
 */
public record Sized(Section section, Material material) {}
