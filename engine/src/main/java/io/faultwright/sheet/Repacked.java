package io.faultwright.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/**
 * A workbook without anything of the moment or the machine that made it: every entry of the archive
 * has one fixed time and is stored as it is, since compressors differ.
 */
final class Repacked {
  /** Java takes the first day of 1980 for a time out of reach, and adds the machine's own zone. */
  private static final LocalDateTime FIXED = LocalDateTime.of(1980, 2, 1, 0, 0);

  private static final String PROPERTIES = "docProps/core.xml";
  private static final String CREATED = "<dcterms:created[^>]*>[^<]*</dcterms:created>";

  private Repacked() {}

  static byte[] of(byte[] workbook) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipFile in = ZipFile.builder().setByteArray(workbook).get();
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (ZipArchiveEntry entry : Collections.list(in.getEntriesInPhysicalOrder())) {
        byte[] content = in.getInputStream(entry).readAllBytes();
        store(entry.getName(), timeless(entry.getName(), content), zip);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static byte[] timeless(String name, byte[] content) {
    String text = new String(content, StandardCharsets.UTF_8);
    return name.equals(PROPERTIES)
        ? text.replaceFirst(CREATED, "").getBytes(StandardCharsets.UTF_8)
        : content;
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
