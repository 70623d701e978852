package io.faultwright.finding;

/** How much a finding matters. */
public enum Severity {
  /** Must be mended; exit code 1. */
  ERROR,
  /** Worth a look; exit code 1 only when asked for. */
  WARNING
}
