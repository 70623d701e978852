package io.faultwright.render.html;

import io.faultwright.page.ArchiveSheet;
import io.faultwright.words.Words;
import java.util.Map;

/** Prints the start page of an archive of releases. */
public final class ArchiveHtml {
  private final Templates templates = new Templates();

  public String print(ArchiveSheet sheet) {
    return templates.print(
        "archive/archive.ftlh", Words.of(sheet.frame().language()), Map.of("it", sheet));
  }
}
