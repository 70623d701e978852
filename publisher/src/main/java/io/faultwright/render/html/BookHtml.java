package io.faultwright.render.html;

import io.faultwright.page.Book;
import java.util.Map;

/** Prints the book as one well-formed XHTML document, to be set by the PDF renderer. */
public final class BookHtml {
  private final Templates templates = new Templates();

  /**
   * @param style the style sheet, put into the document
   */
  public String print(Book book, String style) {
    return templates.print("book/book.ftlh", Map.of("book", book, "style", style));
  }
}
