package io.faultwright.offline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What stands on the list of the worker. */
class WorkerScriptTest {
  private static Release release(String title) {
    return new Release(
        title, "en", "ltr", "3", "2026-03-02", new TreeMap<>(), List.of(), new TreeMap<>());
  }

  private static SortedMap<String, String> files(String content) {
    SortedMap<String, String> files = new TreeMap<>();
    files.put("index.html", Fingerprint.of(content.getBytes(StandardCharsets.UTF_8)));
    files.put("handbook.pdf", "0123456789abcdef");
    files.put("charts/ice-1.svg", "0123456789abcdef");
    files.put("guide/hose.svg", "0123456789abcdef");
    return files;
  }

  private static String first(String script) {
    return script.lines().findFirst().orElseThrow();
  }

  @Test
  void isTheSameForTheSameFilesAndAnotherForOthers() {
    String one = WorkerScript.of(release("A"), files("x"));
    assertEquals(one, WorkerScript.of(release("A"), files("x")));
    assertNotEquals(one, WorkerScript.of(release("A"), files("y")));
    assertNotEquals(one, WorkerScript.of(release("B"), files("x")));
  }

  @Test
  void namesWhatIsKeptAtOnceAndWhatOnceItWasOpened() {
    String list = first(WorkerScript.of(release("A"), files("x")));
    String kept = list.substring(list.indexOf("\"files\":"), list.indexOf("\"extras\":"));
    String extras = list.substring(list.indexOf("\"extras\":"));
    assertTrue(kept.contains("index.html") && kept.contains("guide/hose.svg"), kept);
    assertTrue(extras.contains("handbook.pdf") && extras.contains("charts/ice-1.svg"), extras);
  }

  @Test
  void noTitleEndsTheScript() {
    String list = first(WorkerScript.of(release("</script>\u2028\"; alert(1)"), files("x")));
    assertFalse(list.contains("</script>"), list);
    assertTrue(list.contains("\\\"; alert(1)"), list);
    assertTrue(list.contains("\\u2028"), list);
  }

  @Test
  void fingerprintsAreTheBeginningOfTheHash() {
    assertEquals("ba7816bf8f01cfea", Fingerprint.of("abc".getBytes(StandardCharsets.UTF_8)));
    assertEquals(
        "'sha256-ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0='",
        Fingerprint.source("abc".getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void theManifestNamesTheHandbookBriefly() {
    String manifest = WebManifest.of(release("Walk-in freezers, service handbook"));
    assertTrue(manifest.contains("\"short_name\":\"Walk-in freezers\""), manifest);
    assertTrue(manifest.contains("\"scope\":\".\""), manifest);
  }

  @Test
  void addressesAreResolvedOnTheSiteOnly() {
    assertEquals("style.css", SiteAddress.path("symptom/ice.html", "../style.css"));
    assertEquals("guide/a b.png", SiteAddress.path("guide/x.html", "a%20b.png"));
    assertEquals("", SiteAddress.path("index.html", "https://example.org/x.png"));
    assertEquals("", SiteAddress.path("index.html", "::no"));
  }
}
