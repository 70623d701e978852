package io.faultwright.release;

import io.faultwright.model.KeySignature;
import io.faultwright.model.SignOff;
import java.util.stream.Collectors;

/** Sign-offs as files. */
public final class SignOffYaml {
  private static final String HEAD =
      "# Written by `faultwright sign`. Sign again instead of editing it.\n";

  private SignOffYaml() {}

  /** The whole file of one sign-off. */
  public static String write(SignOff signOff) {
    return HEAD
        + "of: "
        + signOff.of()
        + "\nrole: "
        + signOff.role()
        + "\nname: "
        + quoted(signOff.name())
        + "\ndate: "
        + signOff.date()
        + "\n"
        + signOff.author().map(author -> "author: " + quoted(author) + "\n").orElse("")
        + (signOff.note().isEmpty() ? "" : "note: " + quoted(signOff.note()) + "\n")
        + "meaning: "
        + signOff.meaning()
        + "\nparts:\n"
        + signOff.parts().entrySet().stream()
            .map(part -> "  " + quoted(part.getKey()) + ": " + part.getValue() + "\n")
            .collect(Collectors.joining())
        + signOff.proof().map(SignOffYaml::signature).orElse("");
  }

  private static String signature(KeySignature proof) {
    String lines =
        proof
            .text()
            .lines()
            .map(line -> ("    " + line).stripTrailing() + "\n")
            .collect(Collectors.joining());
    return "signature:\n  " + proof.format().word() + ": |\n" + lines;
  }

  /** In double quotes, on one line. */
  private static String quoted(String text) {
    String line = text.strip().replaceAll("\\s+", " ");
    return '"' + line.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
