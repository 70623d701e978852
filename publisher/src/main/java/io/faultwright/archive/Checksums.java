package io.faultwright.archive;

import io.faultwright.output.Sink;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Passes files on, and lists their SHA-256 as {@code sha256sum} of GNU coreutils does: digits, two
 * blanks, path.
 */
final class Checksums implements Sink {
  /** The file of the list; it is not in it itself. */
  static final String FILE = "SHA256SUMS";

  private static final String BREAK = "  ";

  private final Sink next;
  private final SortedMap<String, String> sums = new TreeMap<>();

  Checksums(Sink next) {
    this.next = next;
  }

  @Override
  public void write(String path, byte[] content) throws IOException {
    next.write(path, content);
    sums.put(path, of(content));
  }

  /** Writes the list of all files so far. */
  void finish() throws IOException {
    String list =
        sums.entrySet().stream()
            .map(sum -> sum.getValue() + BREAK + sum.getKey() + "\n")
            .collect(Collectors.joining());
    next.write(FILE, list.getBytes(StandardCharsets.UTF_8));
  }

  /** The sums in a list, by path. */
  static SortedMap<String, String> parsed(String list) {
    return list.lines()
        .filter(line -> line.contains(BREAK))
        .map(line -> line.split(BREAK, 2))
        .collect(
            Collectors.toMap(
                words -> words[1], words -> words[0], (one, other) -> other, TreeMap::new));
  }

  /** Whether a file is as it was when it was listed. */
  static boolean fits(Map.Entry<String, String> listed, byte[] content) {
    return listed.getValue().equals(of(content));
  }

  private static String of(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java has SHA-256", missing);
    }
  }
}
