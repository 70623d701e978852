package io.faultwright.cli;

import static io.faultwright.cli.SmallBase.ADA;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReleaseCommandTest {
  private static final Pattern LAPSED =
      Pattern.compile("error\\[lapsed-signature]: (.*?) is not what `");
  private static final Pattern CHANGE =
      Pattern.compile("<span class=\"when\">(.*?)</span> <code>(.*?)</code>");
  private static final Pattern HREF = Pattern.compile("href=\"([^\"#:]+)");

  @TempDir Path temporary;
  private SmallBase base;
  private Path archive;

  @BeforeEach
  void write() throws IOException {
    base = new SmallBase(temporary.resolve("kb"));
    archive = temporary.resolve("archive");
  }

  private void sign() {
    base.signAll("engineering", ADA);
    base.signAll("field-service", "Ben Example");
  }

  private int release(int number, String date, String... further) {
    List<String> all =
        new ArrayList<>(List.of("--number", "" + number, "--date", date, "--no-pdf"));
    all.addAll(List.of("--to", archive.toString()));
    all.addAll(List.of(further));
    return base.run("release", all.toArray(String[]::new));
  }

  /** Every file below a folder, by path. */
  static SortedMap<String, byte[]> files(Path folder) throws IOException {
    SortedMap<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        String path = folder.relativize(file).toString().replace('\\', '/');
        files.put(path, Files.readAllBytes(file));
      }
    }
    return files;
  }

  /** The list of checksums is that of GNU coreutils: SHA-256, two blanks, path. */
  static void assertWhole(Path release) throws IOException {
    SortedMap<String, byte[]> files = files(release);
    files.keySet().removeIf(path -> path.startsWith("."));
    String list = new String(files.remove("SHA256SUMS"), StandardCharsets.UTF_8);
    StringBuilder expected = new StringBuilder();
    files.forEach(
        (path, content) -> expected.append(sha256(content)).append("  ").append(path).append("\n"));
    assertEquals(expected.toString(), list);
  }

  private static String sha256(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException missing) {
      throw new AssertionError(missing);
    }
  }

  private static String text(Path file) throws IOException {
    return Files.readString(file);
  }

  private static void assertSame(SortedMap<String, byte[]> one, SortedMap<String, byte[]> other) {
    assertEquals(one.keySet(), other.keySet());
    one.forEach((path, content) -> assertEquals(sha256(content), sha256(other.get(path)), path));
  }

  @Test
  void nothingIsReleasedThatIsNotSigned() {
    base.signAll("engineering", ADA);
    assertEquals(1, release(1, "2026-03-02"));
    assertTrue(base.err().contains("symptom `warm` is not signed as `field-service`"), base.err());
    assertTrue(base.err().contains("release 1 was not made"), base.err());
    assertFalse(Files.exists(archive));
  }

  @Test
  void aReleaseHoldsEverythingAndNoDraft() throws IOException {
    sign();
    assertEquals(0, release(1, "2026-03-02"), base::err);
    Path one = archive.resolve("1");
    assertWhole(one);
    SortedMap<String, byte[]> files = files(one);
    for (String path :
        List.of(
            "release.yaml",
            "report.txt",
            "report.json",
            "sign-offs.txt",
            "review/index.html",
            "review/symptom-warm.html",
            "sources/handbook.yaml",
            "sources/sign-offs/rule/warm/low.engineering.yaml",
            "site/index.html",
            "site/charts/warm-1.svg")) {
      assertTrue(files.containsKey(path), path);
    }
    assertTrue(text(one.resolve("sign-offs.txt")).contains("(unverified name)"));
    assertTrue(text(one.resolve("site/index.html")).contains("Revision 1, 2026-03-02"));
    assertEquals(List.of(), withDraft(one.resolve("site"), true));
  }

  /** Pages and charts that say they are drafts, or that do not. */
  private static List<String> withDraft(Path site, boolean marked) throws IOException {
    List<String> found = new ArrayList<>();
    files(site)
        .forEach(
            (path, content) -> {
              boolean says = new String(content, StandardCharsets.UTF_8).contains("DRAFT");
              if (path.matches(".*\\.(html|svg)") && !path.contains("icon") && says == marked) {
                found.add(path);
              }
            });
    return found;
  }

  @Test
  void whatIsPublishedWithoutAReleaseIsADraft() throws IOException {
    sign();
    Path site = temporary.resolve("site");
    assertEquals(0, base.run("publish", "--to", site.toString()), base::err);
    assertTrue(base.err().contains("`faultwright release` publishes without"), base.err());
    assertEquals(List.of(), withDraft(site, false));
    Path chart = temporary.resolve("chart.svg");
    assertEquals(0, base.run("chart", "warm", "--to", chart.toString()), base::err);
    assertTrue(text(chart).contains("DRAFT"));
    base.edit("handbook.yaml", "  sign-off:", "  # sign-off:");
    assertEquals(0, base.run("publish", "--to", site.toString()), base::err);
    assertEquals(List.of(), withDraft(site, true));
  }

  /** One limit changes: what goes by it is named, and after it is signed the next release comes. */
  @Test
  void fromOneReleaseToTheNext() throws IOException {
    sign();
    assertEquals(0, release(1, "2026-03-02"), base::err);
    SortedMap<String, byte[]> first = files(archive.resolve("1"));
    base.edit("handbook.yaml", "low: 1,", "low: 1.1,");
    base.edit("handbook.yaml", "fan-current: 1 A }", "fan-current: 1.2 A }");
    assertEquals(1, release(2, "2026-03-09"));
    assertEquals(
        Set.of("limits `fan-current`", "symptom `warm`", "rule `warm/low`", "rule `warm/right`"),
        lapsed());
    assertFalse(Files.exists(archive.resolve("2")));
    sign();
    assertEquals(0, release(2, "2026-03-09", "--note", "The fan is another."), base::err);
    assertWhole(archive.resolve("2"));
    assertFalse(Files.exists(archive.resolve("1/site/bulletin.html")));
    assertFalse(Files.exists(archive.resolve("1/bulletin.txt")));
    assertTold(archive.resolve("2"));
    assertSame(first, files(archive.resolve("1")));
    assertEquals(
        List.of(
            "2026-03-09, release 2",
            "2026-03-09, release 2",
            "2026-03-09, release 2",
            "2026-03-02, release 1"),
        lastChanges(archive.resolve("2/review/index.html")));
    assertReachable(archive.resolve("index.html"), "1/site/index.html", "2/site/index.html");
    assertReachable(
        archive.resolve("2/site/releases.html"),
        "../../1/site/index.html",
        "../../2/site/index.html",
        "../../index.html");
    assertTrue(text(archive.resolve("2/site/index.html")).contains("href=\"releases.html\""));
  }

  /** Of the symptom and of its rules, as the report for reviewers lists them. */
  private static List<String> lastChanges(Path index) throws IOException {
    return CHANGE
        .matcher(text(index))
        .results()
        .map(found -> found.group(1) + " " + found.group(2))
        .toList();
  }

  /** What the last command calls lapsed. */
  private Set<String> lapsed() {
    return LAPSED
        .matcher(base.err())
        .results()
        .map(found -> found.group(1))
        .collect(Collectors.toSet());
  }

  /** From 1 to just below 1.1 A the old rules said "within" and the new ones say "below". */
  private static void assertTold(Path release) throws IOException {
    String mail = text(release.resolve("bulletin.txt"));
    for (String said :
        List.of(
            "Since revision 1, 2026-03-02",
            "  The fan is another.\n",
            "  Before: Ask: hotline\n  Now: Fan stands\n",
            "Fan current: at least 1 A and below 1.1 A",
            "  - Too warm, chart\n")) {
      assertTrue(mail.contains(said), mail);
    }
    assertEquals(2, mail.split("  Before: ", -1).length, mail);
    String page = text(release.resolve("site/bulletin.html"));
    assertTrue(page.contains("at least 1 A and below 1.1 A"), page);
    assertReachable(release.resolve("site/bulletin.html"), "charts/warm-1.svg");
    assertReachable(release.resolve("site/index.html"), "bulletin.html");
    assertReachable(release.resolve("site/releases.html"), "bulletin.html");
  }

  /** A release of which only texts changed has a list of them and no bulletin. */
  @Test
  void whereOnlyTextsChangedThereIsNoBulletin() throws IOException {
    sign();
    assertEquals(0, release(1, "2026-03-02"), base::err);
    base.edit("handbook.yaml", "title: Fan is tight", "title: Fan turns hard");
    sign();
    assertEquals(0, release(2, "2026-03-09"), base::err);
    assertFalse(Files.exists(archive.resolve("2/bulletin.txt")));
    assertFalse(Files.exists(archive.resolve("2/site/bulletin.html")));
    String list = text(archive.resolve("2/changed-texts.txt"));
    assertTrue(list.contains("fault fan-tight: title"), list);
    Path preview = temporary.resolve("preview");
    base.edit("handbook.yaml", "low: 1,", "low: 1.1,");
    int code =
        base.run("bulletin", "--since", archive.toString(), "--to", preview.toString(), "--no-pdf");
    assertEquals(0, code, base::err);
    assertTrue(base.err().contains("give the reason with `--note`"), base.err());
    assertTrue(Files.exists(preview.resolve("bulletin.html")));
    assertFalse(Files.exists(preview.resolve("bulletin.pdf")));
    assertTrue(text(preview.resolve("bulletin.txt")).startsWith("DRAFT: "));
    assertTrue(text(preview.resolve("bulletin.txt")).contains("Since revision 2, 2026-03-09"));
  }

  /** Every link of the page leads to a file; these are among them. */
  private static void assertReachable(Path page, String... links) throws IOException {
    List<String> found = HREF.matcher(text(page)).results().map(link -> link.group(1)).toList();
    assertTrue(found.containsAll(List.of(links)), found.toString());
    for (String link : found) {
      assertTrue(Files.isRegularFile(page.resolveSibling(link).normalize()), link);
    }
  }

  @Test
  void whatCannotComeNextIsRefused() throws IOException {
    sign();
    assertEquals(0, release(2, "2026-03-02"), base::err);
    SortedMap<String, byte[]> before = files(archive);
    refused(release(2, "2026-03-02"), "release 2 is there already", "the next one is release 3");
    refused(release(1, "2026-03-02"), "release 1 would come after release 2", "release 3");
    refused(release(3, "2026-03-01"), "2026-03-01 is before that of release 2, 2026-03-02", "");
    refused(release(0, "2026-03-02"), "`0` is no number of a release", "count from 1");
    refused(release(3, "2 March"), "`2 March` is not a date", "2026-03-02");
    refused(base.run("publish", "--to", archive.resolve("2").toString()), "frozen", "another");
    assertSame(before, files(archive));
    Files.writeString(archive.resolve("2/site/index.html"), "changed");
    refused(release(3, "2026-03-02"), "`site/index.html` differs", "from a copy");
  }

  @Test
  void aSignatureAfterTheReleaseIsRefused() {
    sign();
    refused(release(1, "2026-02-28"), "on 2026-03-01, after the date of the release", "--date");
  }

  @Test
  void aFolderOfSomethingElseIsLeftAlone() throws IOException {
    sign();
    Files.createDirectories(archive);
    Files.writeString(archive.resolve("index.html"), "mine");
    refused(release(1, "2026-03-02"), "holds an `index.html` and no release", "new folder");
    assertEquals("mine", text(archive.resolve("index.html")));
  }

  private void refused(int code, String message, String help) {
    assertEquals(2, code, base::out);
    assertTrue(base.err().contains(message), base.err());
    assertTrue(base.err().contains(help), base.err());
  }

  /** Comments, layout, quotes, the order of keys and other files: no byte of the site differs. */
  @Test
  void anotherLayoutOfTheFilesGivesTheSameSite() throws IOException {
    sign();
    assertEquals(0, release(1, "2026-03-02"), base::err);
    SortedMap<String, byte[]> site = files(archive.resolve("1/site"));
    String text = text(base.file("handbook.yaml"));
    int cut = text.indexOf("faults:");
    base.write("z/rest.yaml", "# The rest.\n" + text.substring(cut));
    base.write("handbook.yaml", "\n# Above all.\n" + text.substring(0, cut));
    base.edit(
        "handbook.yaml",
        "title: Small\n  maker: Brantmoor Cold",
        "maker: Brantmoor Cold\n  title: 'Small'");
    base.edit(
        "z/rest.yaml",
        "{ when: { fan-current: below limits }, conclude: fan-stands, because: So. }",
        "\n          because: >-\n            So.\n          conclude: fan-stands\n          when:\n"
            + "            fan-current: below limits");
    archive = temporary.resolve("other");
    assertEquals(0, release(1, "2026-03-02"), base::err);
    assertSame(site, files(archive.resolve("1/site")));
  }

  @Test
  void theSameGivesTheSameBytes() throws IOException {
    sign();
    assertEquals(0, release(1, "2026-03-02"), base::err);
    SortedMap<String, byte[]> once = files(archive);
    archive = temporary.resolve("again");
    assertEquals(0, release(1, "2026-03-02"), base::err);
    assertSame(once, files(archive));
  }
}
