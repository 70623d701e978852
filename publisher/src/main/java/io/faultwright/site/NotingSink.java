package io.faultwright.site;

import io.faultwright.offline.Fingerprint;
import io.faultwright.output.Sink;
import io.faultwright.piece.Digests;
import io.faultwright.piece.FileContent;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Passes files on and notes the fingerprint of each. */
final class NotingSink {
  private final Sink next;
  private final Digests digests;
  private final SortedMap<String, String> fingerprints = new TreeMap<>();

  NotingSink(Sink next, Digests digests) {
    this.next = next;
    this.digests = digests;
  }

  void write(String path, FileContent content) throws IOException {
    Optional<Path> same = content.standsAt();
    if (same.isPresent()) {
      next.take(path, same.get());
    } else {
      next.write(path, content.bytes());
    }
    fingerprints.put(path, digests.of(content, Fingerprint::of));
  }

  /** Of every file so far, by path. */
  SortedMap<String, String> fingerprints() {
    return new TreeMap<>(fingerprints);
  }
}
