package io.faultwright.render.html;

import io.faultwright.page.CasesSheet;
import io.faultwright.page.Link;
import io.faultwright.words.Words;
import java.util.List;
import java.util.Map;

/** Prints the page on the recorded cases as one file that needs no other. */
public final class CasesHtml {
  private final Templates templates = new Templates();

  public String print(CasesSheet sheet) {
    return print(sheet, List.of());
  }

  /**
   * Prints it as a page among others.
   *
   * @param back where it leads back to
   */
  String print(CasesSheet sheet, List<Link> back) {
    return templates.print(
        "cases/cases.ftlh",
        Words.ENGLISH,
        Map.of("it", sheet, "back", back, "style", Resources.text("cases/cases.css")));
  }
}
