package io.faultwright.site;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The elements of a parsed page. */
final class Elements {
  private Elements() {}

  /** Every element, in document order. */
  static List<Element> of(Document document) {
    NodeList found = document.getElementsByTagName("*");
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  /** The values an attribute has on the page. */
  static Stream<String> values(Document document, String attribute) {
    return of(document).stream()
        .filter(element -> element.hasAttribute(attribute))
        .map(element -> element.getAttribute(attribute));
  }
}
