package io.faultwright.piece;

import java.util.zip.CRC32;
import java.util.zip.CRC32C;

/**
 * Tells whether a file is still as it was published. It guards against damage, not against malice:
 * who can change the file can change its seal as well.
 *
 * @param path of the file
 * @param sum its length and two checksums
 */
record Seal(String path, String sum) {
  static Seal of(String path, byte[] content) {
    CRC32 one = new CRC32();
    CRC32C other = new CRC32C();
    one.update(content);
    other.update(content);
    return new Seal(
        path, content.length + "-" + Long.toHexString(one.getValue() << 32 | other.getValue()));
  }

  boolean fits(byte[] content) {
    return of(path, content).equals(this);
  }
}
