package io.faultwright.render.html;

import io.faultwright.layout.Paper;
import io.faultwright.page.BulletinSheet;
import io.faultwright.words.Words;
import java.util.Map;

/**
 * Prints a bulletin as one well-formed XHTML document that needs no other, for paper and screen.
 */
public final class BulletinHtml {
  private final Templates templates = new Templates();

  public String print(BulletinSheet sheet, Paper paper) {
    Words words = Words.of(sheet.frame().language());
    return templates.print(
        "bulletin/bulletin.ftlh",
        words,
        Map.of(
            "sheet",
            sheet,
            "it",
            sheet.content(),
            "style",
            BookHtml.style(words, paper, "bulletin/bulletin.css")));
  }
}
