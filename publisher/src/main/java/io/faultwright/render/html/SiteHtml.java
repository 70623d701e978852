package io.faultwright.render.html;

import io.faultwright.page.Page;
import io.faultwright.words.Words;
import java.util.Map;

/** Prints pages of the site. */
public final class SiteHtml {
  private final Templates templates = new Templates();

  public String print(Page page) {
    return templates.print(
        "site/" + page.content().kind() + ".ftlh",
        Words.of(page.frame().language()),
        Map.of("page", page, "it", page.content()));
  }
}
