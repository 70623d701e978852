package io.faultwright.release;

import io.faultwright.model.Signed;
import io.faultwright.model.Sorted;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What a signature stands for: a thing of the knowledge base and all that it depends on.
 *
 * @param of what is signed
 * @param parts canonical texts by name, as in {@code limits suction-pressure}; the thing itself is
 *     among them
 */
public record Meaning(Signed of, SortedMap<String, String> parts) {
  private static final int SHORT = 16;

  public Meaning {
    parts = Sorted.copy(parts);
  }

  /** Everything, a line for each part. */
  public String text() {
    return parts.entrySet().stream()
        .map(part -> part.getKey() + " = " + part.getValue() + "\n")
        .collect(Collectors.joining());
  }

  /** SHA-256 of the text in UTF-8, in hexadecimal digits. */
  public String hash() {
    return Hash.of(of + "\n" + text());
  }

  /** The first digits of the SHA-256 of each part; enough to tell which of them changed. */
  public SortedMap<String, String> shortHashes() {
    SortedMap<String, String> hashes = new TreeMap<>();
    parts.forEach((name, text) -> hashes.put(name, Hash.of(text).substring(0, SHORT)));
    return hashes;
  }
}
