package io.faultwright.model;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * A signature with a person's own key, over everything else that the sign-off says.
 *
 * @param format which tool understands it
 * @param text in that tool's own armour
 */
public record KeySignature(Format format, String text) {
  /** The kinds of signature. */
  public enum Format {
    /** Of an SSH key, as {@code ssh-keygen -Y sign} makes it. */
    SSH,
    /** Of an OpenPGP key, detached and in armour, as {@code gpg} makes it. */
    GPG;

    /** The name in files. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    public static List<String> words() {
      return Arrays.stream(values()).map(Format::word).toList();
    }
  }
}
