package io.faultwright.input;

import io.faultwright.resolve.ColumnMap;

/**
 * How a table of cases is to be read.
 *
 * @param map what its columns mean
 * @param foreign whether it was made for another purpose, so that columns may mean nothing here
 */
public record TableUse(ColumnMap map, boolean foreign) {
  /** A table made for this knowledge base: every heading is an id. */
  public static final TableUse OWN = new TableUse(ColumnMap.NONE, false);

  /** A table that somebody else made. */
  public static TableUse foreign(ColumnMap map) {
    return new TableUse(map, true);
  }
}
