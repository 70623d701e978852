package io.faultwright.cli;

/** How many values stand beside a threshold. */
enum BoundaryValues {
  TWO("2"),
  THREE("3");

  private final String typed;

  BoundaryValues(String typed) {
    this.typed = typed;
  }

  /** As typed and as shown in the help. */
  @Override
  public String toString() {
    return typed;
  }
}
