package io.faultwright.prose;

/**
 * A finished piece of markup, made by this program and safe to print unescaped.
 *
 * @param markup well-formed both as HTML and as XML
 */
public record Html(String markup) {
  public static final Html NONE = new Html("");

  public boolean isEmpty() {
    return markup.isEmpty();
  }
}
