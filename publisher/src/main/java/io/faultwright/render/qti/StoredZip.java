package io.faultwright.render.qti;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.SortedMap;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A zip archive without anything of the moment or the machine that made it: every entry has one
 * fixed time and is stored as it is, since compressors differ.
 */
final class StoredZip {
  /** Java takes the first day of 1980 for a time out of reach, and adds the machine's own zone. */
  private static final LocalDateTime FIXED = LocalDateTime.of(1980, 2, 1, 0, 0);

  private StoredZip() {}

  static byte[] of(SortedMap<String, byte[]> files) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        store(file.getKey(), file.getValue(), zip);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static void store(String name, byte[] content, ZipOutputStream zip) throws IOException {
    CRC32 sum = new CRC32();
    sum.update(content);
    ZipEntry entry = new ZipEntry(name);
    entry.setMethod(ZipEntry.STORED);
    entry.setSize(content.length);
    entry.setCrc(sum.getValue());
    entry.setTimeLocal(FIXED);
    zip.putNextEntry(entry);
    zip.write(content);
    zip.closeEntry();
  }
}
