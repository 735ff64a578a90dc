/**
 * Device files: a device stated as a YAML text, read with all its errors told at once, and written
 * so that reading gives an equal device. The format has its own page, {@code
 * shared/device-file.md}.
 */
package bellcrank.examples.file;
