package io.faultwright.render.html;

import io.faultwright.font.Fonts;
import io.faultwright.font.Fonts.WebFont;
import io.faultwright.layout.Paper;
import io.faultwright.page.LessonSheet;
import io.faultwright.words.Words;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Prints a session as pages to be projected, and as a handout. */
public final class LessonHtml {
  private final Templates templates = new Templates();

  /**
   * The pages to be projected, with all that they need, by path.
   *
   * @param key by which a browser keeps apart the progress of sessions
   */
  public SortedMap<String, byte[]> projector(LessonSheet sheet, String key) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    String page =
        templates.print("lesson/projector.ftlh", words(sheet), Map.of("sheet", sheet, "key", key));
    add(files, "index.html", page);
    add(files, "lesson.css", SiteStyle.faces("fonts/") + Resources.text("lesson/lesson.css"));
    add(files, "lesson.js", Resources.text("lesson/lesson.js"));
    for (WebFont font : Fonts.web()) {
      files.put("fonts/" + font.name(), font.bytes());
    }
    files.put("fonts/OFL.txt", Fonts.licence());
    return files;
  }

  /** The handout as a well-formed XHTML document, to be set by the PDF renderer. */
  public String handout(LessonSheet sheet, Paper paper) {
    String style =
        BookHtml.style(words(sheet), paper, "book/book.css") + Resources.text("lesson/handout.css");
    return templates.print(
        "lesson/handout.ftlh", words(sheet), Map.of("sheet", sheet, "style", style));
  }

  private static Words words(LessonSheet sheet) {
    return Words.of(sheet.frame().language());
  }

  private static void add(Map<String, byte[]> files, String path, String text) {
    files.put(path, text.getBytes(StandardCharsets.UTF_8));
  }
}
