package io.faultwright.find;

/** Where a word stands, the least telling place first. */
enum Weight {
  /** In an instruction or a guide. */
  TEXT,
  /** In the sentence that says what it is or asks. */
  ABOUT,
  /** In what people call it. */
  SYNONYM,
  /** In its name or number. */
  TITLE
}
