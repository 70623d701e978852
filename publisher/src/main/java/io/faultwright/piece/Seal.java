package io.faultwright.piece;

/**
 * Tells whether a file is still as it was published.
 *
 * @param path of the file
 * @param sum its length and checksums
 */
record Seal(String path, String sum) {}
