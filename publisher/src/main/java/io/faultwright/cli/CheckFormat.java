package io.faultwright.cli;

/** How a check is printed. */
enum CheckFormat {
  TEXT,
  JSON
}
