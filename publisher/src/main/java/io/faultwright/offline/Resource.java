package io.faultwright.offline;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Files of this package that become part of a site. */
final class Resource {
  private Resource() {}

  static byte[] bytes(String name) {
    try (InputStream in = Resource.class.getResourceAsStream(name)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(String name) {
    return new String(bytes(name), StandardCharsets.UTF_8);
  }
}
