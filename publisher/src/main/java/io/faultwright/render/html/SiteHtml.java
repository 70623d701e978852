package io.faultwright.render.html;

import io.faultwright.page.Page;
import java.util.Map;

/** Prints pages of the site. */
public final class SiteHtml {
  private final Templates templates = new Templates();

  public String print(Page page) {
    return templates.print(
        "site/" + page.content().kind() + ".ftlh", Map.of("page", page, "it", page.content()));
  }
}
