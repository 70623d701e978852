package io.faultwright.cli;

import java.nio.charset.StandardCharsets;

/** What a folder with names of persons says about itself. */
final class PersonalData {
  static final String FILE = "personal-data.txt";

  private PersonalData() {}

  /** The note for a folder. */
  static byte[] note(String what) {
    String text =
        """
        This folder holds personal data: %s.
        Keep it to yourself. Nothing of it is put into the site, the book or a release.
        To delete it, delete this folder, its copies and the result files it was made from.
        Your local law says how long you may keep it, and what participants may ask of you.
        """;
    return text.replace("%s", what).getBytes(StandardCharsets.UTF_8);
  }
}
