package io.faultwright.release;

import io.faultwright.model.SignOff;
import java.util.List;
import java.util.stream.Collectors;

/** Who signed what, as text for people. */
public final class SignOffList {
  private SignOffList() {}

  /** A line for each thing and for each signature under it; a sentence where there is none. */
  public static String write(List<SignOffState> states) {
    String text =
        states.stream()
            .filter(state -> !state.signatures().isEmpty())
            .map(state -> state.of() + "\n" + signatures(state))
            .collect(Collectors.joining());
    return text.isEmpty() ? "Nothing is signed.\n" : text;
  }

  private static String signatures(SignOffState state) {
    return state.signatures().stream().map(SignOffList::line).collect(Collectors.joining());
  }

  private static String line(Signature signature) {
    SignOff signOff = signature.signOff();
    return "  "
        + signOff.role()
        + ": "
        + signOff.name()
        + ", "
        + signOff.date()
        + " ("
        + signature.proof().words()
        + ")"
        + signOff.author().map(author -> ", written by " + author).orElse("")
        + (signOff.note().isEmpty() ? "" : ": " + signOff.note())
        + "\n";
  }
}
