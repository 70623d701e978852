package io.faultwright.plain;

/** Rules of plain language for instructions. */
public enum PlainRule {
  /** At most 20 words a sentence; counted, so sure. */
  LENGTH("At most 20 words a sentence", true),
  /** One instruction a sentence; guessed from verbs. */
  ONE_INSTRUCTION("One instruction a sentence", false),
  /** A command, not a description; guessed from the first word. */
  IMPERATIVE("Say it as a command", false),
  /** A warning stands before what it warns of; guessed from its words. */
  CAUTION_FIRST("The caution before the step", false);

  private final String title;
  private final boolean sure;

  PlainRule(String title, boolean sure) {
    this.title = title;
    this.sure = sure;
  }

  /** As a heading says it. */
  public String title() {
    return title;
  }

  /** Whether it is counted; else a person has to look. */
  public boolean sure() {
    return sure;
  }
}
