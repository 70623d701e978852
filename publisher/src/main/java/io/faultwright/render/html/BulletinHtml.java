package io.faultwright.render.html;

import io.faultwright.layout.Paper;
import io.faultwright.page.BulletinSheet;
import io.faultwright.words.Words;
import java.util.Map;

/** Prints a bulletin as one document that needs no other. */
public final class BulletinHtml {
  private static final String STYLE = "bulletin/bulletin.css";

  private final Templates templates = new Templates();

  /** A well-formed XHTML document, to be set by the PDF renderer. */
  public String paper(BulletinSheet sheet, Paper paper) {
    String style =
        Resources.text(STYLE) + BookHtml.style(words(sheet), paper, "bulletin/paper.css");
    return print("bulletin/bulletin.ftlh", sheet, style);
  }

  /** A page for a browser, without links and scripts. */
  public String preview(BulletinSheet sheet) {
    return print("bulletin/preview.ftlh", sheet, Resources.text(STYLE));
  }

  private String print(String template, BulletinSheet sheet, String style) {
    return templates.print(
        template, words(sheet), Map.of("sheet", sheet, "it", sheet.content(), "style", style));
  }

  private static Words words(BulletinSheet sheet) {
    return Words.of(sheet.frame().language());
  }
}
