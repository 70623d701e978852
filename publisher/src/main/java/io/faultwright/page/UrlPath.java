package io.faultwright.page;

import java.net.URI;
import java.net.URISyntaxException;

/** Paths of files as addresses write them. */
final class UrlPath {
  private UrlPath() {}

  /** A relative path with spaces, marks and letters outside ASCII encoded. */
  static String encoded(String path) {
    try {
      return new URI(null, null, "/" + path, null).toASCIIString().substring(1);
    } catch (URISyntaxException e) {
      throw new IllegalArgumentException(path, e);
    }
  }
}
