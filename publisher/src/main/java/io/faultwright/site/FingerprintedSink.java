package io.faultwright.site;

import io.faultwright.offline.Fingerprint;
import io.faultwright.output.Sink;
import io.faultwright.piece.Digests;
import java.io.IOException;
import java.util.SortedMap;
import java.util.TreeMap;

/** Passes files on and notes the fingerprint of each. */
final class FingerprintedSink implements Sink {
  private final Sink next;
  private final Digests digests;
  private final SortedMap<String, String> fingerprints = new TreeMap<>();

  FingerprintedSink(Sink next, Digests digests) {
    this.next = next;
    this.digests = digests;
  }

  @Override
  public void write(String path, byte[] content) throws IOException {
    next.write(path, content);
    fingerprints.put(path, digests.of(content, Fingerprint::of));
  }

  /** Of every file so far, by path. */
  SortedMap<String, String> fingerprints() {
    return new TreeMap<>(fingerprints);
  }
}
