package io.faultwright.render.html;

import io.faultwright.layout.Paper;
import io.faultwright.page.Book;
import io.faultwright.words.Words;
import java.util.Map;

/** Prints the book as one well-formed XHTML document, to be set by the PDF renderer. */
public final class BookHtml {
  /** The foot of a page in the style sheet. */
  private static final String PAGE = "\"Page \" counter(page) \" of \" counter(pages)";

  private final Templates templates = new Templates();

  public String print(Book book, Paper paper) {
    Words words = Words.of(book.frame().language());
    return templates.print(
        "book/book.ftlh",
        words,
        Map.of("book", book, "style", style(words, paper, "book/book.css")));
  }

  /** A style sheet for paper, with the foot of a page in the words of the handbook. */
  static String style(Words words, Paper paper, String resource) {
    return Resources.text(resource).replace(PAGE, page(words)) + sheets(paper);
  }

  private static String page(Words words) {
    return "\""
        + words.say("Page {0} of {1}", "\" counter(page) \"", "\" counter(pages) \"")
        + "\"";
  }

  private static String sheets(Paper paper) {
    String size = paper.width() + "pt " + paper.height() + "pt";
    String turned = paper.height() + "pt " + paper.width() + "pt";
    return "@page { size: "
        + size
        + "; }\n"
        + "@page upright { size: "
        + size
        + "; }\n"
        + "@page wide { size: "
        + turned
        + "; }\n";
  }
}
