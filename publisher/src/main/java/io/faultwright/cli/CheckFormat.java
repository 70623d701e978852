package io.faultwright.cli;

/** How a check is printed. */
enum CheckFormat {
  /** For people. */
  TEXT,
  /** For machines; a contract of our own. */
  JSON,
  /** For forges that show findings beside lines: SARIF 2.1.0. */
  SARIF,
  /** For forges that show test results: JUnit XML. */
  JUNIT
}
