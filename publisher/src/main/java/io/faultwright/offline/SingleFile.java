package io.faultwright.offline;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A whole site as one page in one file, to mail or to put on a stick.
 *
 * <p>The start page stands in it as it is. Of every other page it holds what stands between head
 * and foot, inert, until the script of the file shows it. Scripts and data lie in it as text; the
 * policy of the file names each by its fingerprint, so that nothing else in it can ever run.
 */
public final class SingleFile {
  private static final String START = "index.html";
  private static final String ROUTER = Resource.text("single.js");

  private static final String NO_SCRIPTS =
      "<noscript><p class=\"draft\"><b>Only the start page</b> can be read here: the other pages"
          + " need scripts, and this program runs none. Open the file in a browser.</p></noscript>";

  private final SortedMap<String, byte[]> files;
  private final List<SitePage> pages;
  private final SitePage start;

  private SingleFile(SortedMap<String, byte[]> files) {
    this.files = files;
    DataAddresses data = new DataAddresses(files);
    this.pages =
        files.keySet().stream()
            .filter(path -> path.endsWith(".html"))
            .map(path -> SitePage.read(path, text(path), data))
            .toList();
    this.start = pages.stream().filter(page -> page.path().equals(START)).findFirst().orElseThrow();
  }

  /** The file, from the files of a site by their paths. */
  public static byte[] of(SortedMap<String, byte[]> site) {
    return new SingleFile(site).html().getBytes(StandardCharsets.UTF_8);
  }

  private String html() {
    return start.opening()
        + ("<meta charset=\"utf-8\">\n" + policy() + "\n" + start.head() + icon())
        + ("<style>" + Inert.style(style()) + "</style>\n</head>\n")
        + (start.beforeMain().replaceFirst(">", ">\n" + NO_SCRIPTS))
        + ("<main id=\"main\">" + start.main() + "</main>" + start.afterMain())
        + pages.stream().map(this::template).collect(Collectors.joining())
        + scripts().map(this::block).collect(Collectors.joining())
        + ("<script>" + Inert.script(ROUTER) + "</script>\n</body>\n</html>\n");
  }

  private String template(SitePage page) {
    return "<template data-page=\""
        + Inert.attribute(page.path())
        + "\" data-title=\""
        + page.title()
        + "\" data-scripts=\""
        + Inert.attribute(String.join(" ", page.scripts()))
        + "\">"
        + (page == start ? "" : page.main())
        + "</template>\n";
  }

  private String block(String path) {
    return "<script type=\"text/plain\" data-file=\""
        + Inert.attribute(path)
        + "\">"
        + Inert.script(text(path))
        + "</script>\n";
  }

  /** Everything that pages may run, but for what speaks of hosts and workers. */
  private Stream<String> scripts() {
    return files.keySet().stream()
        .filter(path -> path.endsWith(".js"))
        .filter(path -> !path.equals(OfflineFiles.SCRIPT) && !path.equals(OfflineFiles.WORKER));
  }

  private String style() {
    DataAddresses data = new DataAddresses(files);
    return pages.stream()
        .flatMap(page -> page.styles().stream())
        .distinct()
        .map(path -> data.inStyle(path, text(path)))
        .collect(Collectors.joining("\n"));
  }

  private String icon() {
    String icon = new DataAddresses(files).of(OfflineFiles.ICON);
    return "<link rel=\"icon\" href=\"" + icon + "\">\n";
  }

  private String policy() {
    String allowed =
        Stream.concat(scripts().map(this::text), Stream.of(ROUTER))
            .map(SingleFile::source)
            .sorted()
            .distinct()
            .collect(Collectors.joining(" "));
    return "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src "
        + allowed
        + "; style-src "
        + source(style())
        + "; font-src data:; img-src data:; base-uri 'none'; form-action 'none'\">";
  }

  private static String source(String text) {
    return Fingerprint.source(text.getBytes(StandardCharsets.UTF_8));
  }

  private String text(String path) {
    return new String(files.get(path), StandardCharsets.UTF_8);
  }
}
