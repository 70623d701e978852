package io.faultwright.page;

/**
 * A release of the handbook.
 *
 * @param number counts up from release to release
 * @param date given by whoever released it, ISO 8601
 * @param site its start page, seen from the folder in which the page that links to it is rooted
 */
public record Released(int number, String date, String site) {}
