package io.faultwright.layout;

import java.util.Optional;

/**
 * Where a symptom stands online, as printed on its charts.
 *
 * @param address of its page
 * @param code the address for cameras; none where it is too long
 */
record OnlinePage(String address, Optional<QrSymbol> code) {
  /** Drawing the code takes long beside the frame of a page, so it is drawn once for a chart. */
  static OnlinePage of(String address) {
    return new OnlinePage(address, QrSymbol.of(address));
  }
}
