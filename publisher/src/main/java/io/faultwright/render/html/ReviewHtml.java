package io.faultwright.render.html;

import io.faultwright.font.Fonts;
import io.faultwright.font.Fonts.WebFont;
import io.faultwright.page.CasesSheet;
import io.faultwright.page.Link;
import io.faultwright.page.ReviewSheet;
import io.faultwright.words.Words;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Prints the report for reviewers as files that need no others. */
public final class ReviewHtml {
  private static final String INDEX = "index.html";

  private final Templates templates = new Templates();

  /** Every file by its path. */
  public SortedMap<String, byte[]> files(ReviewSheet sheet, CasesSheet cases) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    add(files, INDEX, print("index", sheet, Map.of("mistakes", mistakes(cases))));
    add(files, "findings.html", print("findings", sheet, Map.of()));
    add(files, "texts.html", print("texts", sheet, Map.of()));
    for (ReviewSheet.Complaint one : sheet.complaints()) {
      add(files, one.path(), print("symptom", sheet, Map.of("one", one)));
    }
    Link back = new Link("Index of rules", INDEX);
    add(files, "cases.html", new CasesHtml().print(cases, List.of(back)));
    add(files, "style.css", SiteStyle.faces("fonts/") + Resources.text("review/review.css"));
    for (WebFont font : Fonts.web()) {
      files.put("fonts/" + font.name(), font.bytes());
    }
    files.put("fonts/OFL.txt", Fonts.licence());
    return files;
  }

  private static String mistakes(CasesSheet cases) {
    return cases.mistakes().stream()
        .findFirst()
        .map(one -> "Of mistakes put into rules and limits, " + one.score())
        .orElse("No mistakes were put into rules and limits to see whether a case notices them.");
  }

  private String print(String template, ReviewSheet sheet, Map<String, Object> more) {
    Map<String, Object> values = new HashMap<>(more);
    values.put("it", sheet);
    return templates.print("review/" + template + ".ftlh", Words.ENGLISH, values);
  }

  private static void add(Map<String, byte[]> files, String path, String text) {
    files.put(path, text.getBytes(StandardCharsets.UTF_8));
  }
}
