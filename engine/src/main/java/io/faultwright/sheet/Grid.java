package io.faultwright.sheet;

import java.util.List;
import java.util.Optional;

/**
 * The cells of a sheet; rows without anything in them are left out.
 *
 * @param file what its places name as their file: a CSV file, or a sheet of a workbook
 * @param sheet the name of the sheet; empty for a CSV file
 * @param separator what stands between the cells of a CSV file
 * @param rows the heading first; every cell from the first column on
 */
record Grid(
    String file,
    Optional<String> sheet,
    Optional<Character> separator,
    List<List<GridCell>> rows) {}
