package io.faultwright.output;

/** Thrown where writing would harm something that is not ours. */
public final class Refused extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String help;

  /**
   * @param message what stands in the way: lower case, no full stop, names in backticks
   * @param help the cure
   */
  public Refused(String message, String help) {
    super(message);
    this.help = help;
  }

  public String help() {
    return help;
  }
}
