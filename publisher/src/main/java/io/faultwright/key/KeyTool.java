package io.faultwright.key;

import io.faultwright.model.Signer;
import io.faultwright.release.Proof;
import java.io.IOException;

/** Makes and verifies signatures of one format. */
interface KeyTool {
  /**
   * The signature of a key under some bytes.
   *
   * @param key which of the person's keys: a file, or what the tool calls it by
   */
  String sign(byte[] statement, String key) throws IOException;

  /** Whether one of the person's keys made the signature. */
  Proof verify(byte[] statement, String signature, Signer signer) throws IOException;
}
