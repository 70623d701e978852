package io.faultwright.sheet;

import io.faultwright.source.Place;

/**
 * A comment in the rows of a table that an import touches.
 *
 * @param place where it stands in the file as it was
 * @param text the comment with its {@code #}
 * @param lost whether it is gone after the import; else it stands at a row that changed
 */
record Remark(Place place, String text, boolean lost) {}
