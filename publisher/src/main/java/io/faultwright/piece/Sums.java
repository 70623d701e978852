package io.faultwright.piece;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;

/**
 * The length and two checksums of a content. They guard against damage, not against malice: who can
 * change the file can change what is noted of it as well.
 */
final class Sums {
  private static final ThreadLocal<byte[]> BUFFER =
      ThreadLocal.withInitial(() -> new byte[1 << 16]);

  private final CRC32 one = new CRC32();
  private final CRC32C other = new CRC32C();
  private long length;

  private Sums() {}

  static String of(byte[] content) {
    Sums sums = new Sums();
    sums.add(content, content.length);
    return sums.text();
  }

  static String of(Path file) throws IOException {
    Sums sums = new Sums();
    byte[] buffer = BUFFER.get();
    try (InputStream in = Files.newInputStream(file)) {
      for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
        sums.add(buffer, read);
      }
    }
    return sums.text();
  }

  private void add(byte[] bytes, int count) {
    one.update(bytes, 0, count);
    other.update(bytes, 0, count);
    length += count;
  }

  private String text() {
    return length + "-" + Long.toHexString(one.getValue() << 32 | other.getValue());
  }
}
