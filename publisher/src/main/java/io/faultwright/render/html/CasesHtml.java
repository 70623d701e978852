package io.faultwright.render.html;

import io.faultwright.page.CasesSheet;
import io.faultwright.words.Words;
import java.util.Map;

/** Prints the page on the recorded cases as one file that needs no other. */
public final class CasesHtml {
  private final Templates templates = new Templates();

  public String print(CasesSheet sheet) {
    return templates.print(
        "cases/cases.ftlh",
        Words.ENGLISH,
        Map.of("it", sheet, "style", Resources.text("cases/cases.css")));
  }
}
