package io.faultwright.archive;

/**
 * What a release says about itself.
 *
 * @param number counts up from release to release
 * @param date given by whoever released it, ISO 8601
 * @param handbook title
 * @param revision as the trainer counts
 */
public record ReleaseNote(int number, String date, String handbook, String revision) {
  /** The file it stands in. */
  public static final String FILE = "release.yaml";

  /** The text of that file. */
  public String yaml() {
    return "number: "
        + number
        + "\ndate: "
        + date
        + "\nhandbook: "
        + quoted(handbook)
        + "\nrevision: "
        + quoted(revision)
        + "\n";
  }

  private static String quoted(String text) {
    String line = text.strip().replaceAll("\\s+", " ");
    return '"' + line.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
