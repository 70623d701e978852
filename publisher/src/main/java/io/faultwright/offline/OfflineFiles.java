package io.faultwright.offline;

import io.faultwright.json.Json;
import java.nio.charset.StandardCharsets;
import java.util.SortedMap;
import java.util.TreeMap;

/** The files of a site that let devices keep it. */
public final class OfflineFiles {
  /** The script on every page. */
  public static final String SCRIPT = "offline.js";

  /** The script that a device runs behind the pages; it lists all other files. */
  public static final String WORKER = "worker.js";

  public static final String MANIFEST = "handbook.webmanifest";
  public static final String ICON = "icon.svg";

  private OfflineFiles() {}

  /** What the script on every page says, for the words it needs in other languages. */
  public static String script() {
    return Resource.text(SCRIPT) + Resource.text(WORKER);
  }

  /** The words of one language, as a call that hands them to the script on its pages. */
  public static byte[] words(SortedMap<String, String> words) {
    String script = "(window.faultwright = window.faultwright || {}).offlineWords = ";
    return (script + Json.text(words) + ";\n").getBytes(StandardCharsets.UTF_8);
  }

  /** All but the worker, by path. */
  public static SortedMap<String, byte[]> besidesTheWorker(Release release) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    files.put(SCRIPT, Resource.bytes(SCRIPT));
    files.put(MANIFEST, WebManifest.of(release).getBytes(StandardCharsets.UTF_8));
    files.put(ICON, Resource.bytes(ICON));
    WebManifest.PICTURES.forEach(picture -> files.put(picture, Resource.bytes(picture)));
    return files;
  }

  /**
   * The worker.
   *
   * @param fingerprints of every other file of the site, by path
   */
  public static byte[] worker(Release release, SortedMap<String, String> fingerprints) {
    return WorkerScript.of(release, fingerprints).getBytes(StandardCharsets.UTF_8);
  }
}
