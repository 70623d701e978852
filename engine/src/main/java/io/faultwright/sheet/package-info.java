/**
 * Tables of limits as sheets: CSV files and XLSX workbooks, out and back in. The only user of the
 * spreadsheet library.
 */
package io.faultwright.sheet;
