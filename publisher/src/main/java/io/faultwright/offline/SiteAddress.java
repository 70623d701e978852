package io.faultwright.offline;

import java.net.URI;
import java.net.URISyntaxException;

/** Addresses on the site as its files name each other. */
final class SiteAddress {
  private static final URI ROOT = URI.create("site:/");

  private SiteAddress() {}

  /** The path of the file that an address means, seen from another file; empty for none. */
  static String path(String from, String address) {
    try {
      URI there = ROOT.resolve(new URI(null, null, from, null)).resolve(address);
      return "site".equals(there.getScheme()) ? there.getPath().substring(1) : "";
    } catch (URISyntaxException | IllegalArgumentException notAnAddress) {
      return "";
    }
  }
}
