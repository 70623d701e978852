package io.faultwright.piece;

/**
 * What something is made from, as a short text: equal where all of it is equal.
 *
 * @param hex SHA-256, in hexadecimal digits
 */
public record Fingerprint(String hex) {}
