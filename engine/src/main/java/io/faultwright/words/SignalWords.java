package io.faultwright.words;

/** Signal words of cautions (ANSI Z535.6, ISO 3864-2) in a language. */
public final class SignalWords {
  private SignalWords() {}

  /** The word for one of the English words. */
  public static String of(String english, Words say) {
    return switch (english) {
      case "DANGER" -> say.say("DANGER");
      case "WARNING" -> say.say("WARNING");
      case "CAUTION" -> say.say("CAUTION");
      default -> say.say("NOTICE");
    };
  }
}
