package io.faultwright.flow;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A caution shown before a step.
 *
 * @param word signal word in capitals
 * @param alert whether people can be hurt, which calls for the safety alert symbol
 * @param text the hazard and how to avoid it
 */
public record Warning(String word, boolean alert, String text) {
  private static final Pattern SENTENCE = Pattern.compile(".*?[.!?](?=\\s)", Pattern.DOTALL);

  /** The first sentence, which names the hazard. */
  public String hazard() {
    Matcher sentence = SENTENCE.matcher(text.strip());
    return sentence.lookingAt() ? sentence.group() : text.strip();
  }

  /** Whether there is more to say than the hazard. */
  public boolean hasMore() {
    return !hazard().equals(text.strip());
  }
}
