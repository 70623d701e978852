package io.faultwright.xml;

import java.util.ArrayDeque;
import java.util.Deque;

/** Writes XML element by element; everything given as text or attribute is escaped. */
public final class Xml {
  /** The first line of a file. */
  public static final String DECLARATION = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";

  private final StringBuilder out = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /** Opens an element with attributes given as names and values in turn. */
  public Xml open(String name, Object... attributes) {
    tag(name, attributes);
    out.append(">\n");
    open.push(name);
    return this;
  }

  public Xml close() {
    out.append("</").append(open.pop()).append(">\n");
    return this;
  }

  /** An element without content. */
  public Xml empty(String name, Object... attributes) {
    tag(name, attributes);
    out.append("/>\n");
    return this;
  }

  /** An element with nothing but text. */
  public Xml text(String name, String content, Object... attributes) {
    tag(name, attributes);
    out.append('>').append(escaped(content)).append("</").append(name).append(">\n");
    return this;
  }

  private void tag(String name, Object... attributes) {
    out.append('<').append(name);
    for (int i = 0; i < attributes.length; i += 2) {
      String value = value(attributes[i + 1]);
      out.append(' ').append(attributes[i]).append("=\"").append(value).append('"');
    }
  }

  private static String value(Object attribute) {
    return attribute instanceof Number number
        ? number(number.doubleValue())
        : escaped(attribute.toString());
  }

  /** A number to half a point or, for line weights, a hundredth; never with an exponent. */
  public static String number(double value) {
    long hundredths = Math.round(value * 100);
    String sign = hundredths < 0 ? "-" : "";
    long whole = Math.abs(hundredths) / 100;
    long rest = Math.abs(hundredths) % 100;
    if (rest == 0) {
      return sign + whole;
    }
    String digits = rest % 10 == 0 ? Long.toString(rest / 10) : (rest < 10 ? "0" : "") + rest;
    return sign + whole + "." + digits;
  }

  /** Text with markup made harmless; what XML 1.0 cannot hold becomes U+FFFD. */
  public static String escaped(String text) {
    StringBuilder escaped = new StringBuilder();
    text.codePoints().forEach(codePoint -> append(escaped, codePoint));
    return escaped.toString();
  }

  private static void append(StringBuilder escaped, int codePoint) {
    switch (codePoint) {
      case '&' -> escaped.append("&amp;");
      case '<' -> escaped.append("&lt;");
      case '>' -> escaped.append("&gt;");
      case '"' -> escaped.append("&quot;");
      default -> escaped.appendCodePoint(allowed(codePoint) ? codePoint : 0xFFFD);
    }
  }

  private static boolean allowed(int codePoint) {
    return codePoint == '\t'
        || codePoint == '\n'
        || codePoint >= 0x20 && codePoint < 0xD800
        || codePoint > 0xDFFF && codePoint < 0xFFFE
        || codePoint > 0xFFFF;
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
