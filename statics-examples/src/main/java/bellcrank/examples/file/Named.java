package bellcrank.examples.file;

/**
 * An entry of a mapping from names to parts.
 *
 * @param text the name
 * @param name where the name stands
 * @param value where the part stands
 */
record Named(String text, Spot name, Spot value) {}
