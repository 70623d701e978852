package io.faultwright.release;

import io.faultwright.model.SignOff;
import java.nio.charset.StandardCharsets;

/** What a person signs with a key: everything that the sign-off says, line by line. */
public final class Statement {
  /** Under which these statements are signed, so that no signature serves for something else. */
  public static final String NAMESPACE = "faultwright-sign-off";

  private Statement() {}

  /** The bytes under the signature. */
  public static byte[] of(SignOff signOff) {
    String text =
        NAMESPACE
            + "\nof: "
            + signOff.of()
            + "\nrole: "
            + line(signOff.role())
            + "\nname: "
            + line(signOff.name())
            + "\ndate: "
            + signOff.date()
            + "\nauthor: "
            + signOff.author().map(Statement::line).orElse("")
            + "\nnote: "
            + line(signOff.note())
            + "\nmeaning: "
            + signOff.meaning()
            + "\n";
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String line(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }
}
