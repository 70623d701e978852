package io.faultwright.offline;

import java.util.List;
import java.util.regex.Pattern;

/**
 * A page of the site taken apart. Whatever a trainer wrote is escaped in it, so that the marks of
 * the frame stand in it where the frame put them and nowhere else.
 *
 * @param path its file
 * @param opening up to the beginning of its head
 * @param title as it stands in the page, escaped
 * @param head what of its head says nothing of other files
 * @param beforeMain its body up to its main part
 * @param main what stands in its main part
 * @param afterMain its foot
 * @param styles paths of its style sheets
 * @param scripts paths of its scripts, in order, but for the one about hosts
 */
record SitePage(
    String path,
    String opening,
    String title,
    String head,
    String beforeMain,
    String main,
    String afterMain,
    List<String> styles,
    List<String> scripts) {
  private static final String MAIN = "<main id=\"main\">";
  private static final Pattern STYLE =
      Pattern.compile("<link rel=\"stylesheet\" href=\"([^\"]*)\">");
  private static final Pattern SCRIPT = Pattern.compile("<script src=\"([^\"]*)\"[^>]*></script>");
  private static final Pattern ELSEWHERE =
      Pattern.compile(
          "<link [^>]*>\\n?|<script [^>]*></script>\\n?|<meta charset[^>]*>\\n?"
              + "|<meta http-equiv=\"Content-Security-Policy\"[^>]*>\\n?");

  static SitePage read(String path, String html, DataAddresses data) {
    String head = between(html, "<head>", "</head>");
    String body = html.substring(html.indexOf("</head>") + "</head>".length());
    int main = body.indexOf(MAIN);
    int end = body.lastIndexOf("</main>");
    return new SitePage(
        path,
        html.substring(0, html.indexOf("<head>")).strip() + "\n" + "<head>\n",
        between(head, "<title>", "</title>"),
        ELSEWHERE.matcher(head).replaceAll("").strip() + "\n",
        body.substring(0, main).strip() + "\n",
        data.inPage(path, body.substring(main + MAIN.length(), end)),
        body.substring(end + "</main>".length(), body.lastIndexOf("</body>")),
        addresses(STYLE, path, head),
        addresses(SCRIPT, path, head).stream()
            .filter(script -> !script.equals(OfflineFiles.SCRIPT))
            .toList());
  }

  private static String between(String text, String before, String after) {
    int start = text.indexOf(before) + before.length();
    return text.substring(start, text.indexOf(after, start));
  }

  private static List<String> addresses(Pattern named, String path, String head) {
    return named
        .matcher(head)
        .results()
        .map(found -> SiteAddress.path(path, found.group(1)))
        .toList();
  }
}
