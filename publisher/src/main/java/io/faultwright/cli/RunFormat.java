package io.faultwright.cli;

/** How cases that were run are printed. */
enum RunFormat {
  TEXT,
  JSON,
  CSV
}
