package io.faultwright.prose;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Optional;

/** Checks that an address is one that a browser reads as it was written. */
final class WebAddress {
  private WebAddress() {}

  /** The address in ASCII where it is a well-formed one; absent otherwise. */
  static Optional<String> wellFormed(String address) {
    try {
      URI uri = new URI(address.strip());
      boolean complete = uri.isOpaque() || uri.getHost() != null;
      return complete ? Optional.of(uri.toASCIIString()) : Optional.empty();
    } catch (URISyntaxException notAnAddress) {
      return Optional.empty();
    }
  }
}
