package io.faultwright.offline;

import io.faultwright.json.Json;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** The worker with the list of what it keeps; any change of a file changes its text. */
final class WorkerScript {
  /** A chart by itself, in any language; pages have their own drawings in them. */
  private static final Pattern CHART = Pattern.compile("([^/]+/)?charts/[^/]+\\.svg");

  private WorkerScript() {}

  static String of(Release release, SortedMap<String, String> fingerprints) {
    Map<String, Object> handbook = release.fields();
    handbook.put("files", only(fingerprints, path -> !isExtra(path)));
    handbook.put("extras", only(fingerprints, WorkerScript::isExtra));
    String name = Fingerprint.of(Json.text(handbook).getBytes(StandardCharsets.UTF_8));
    Map<String, Object> named = new LinkedHashMap<>();
    named.put("name", name);
    named.putAll(handbook);
    return "const handbook = " + Json.text(named) + ";\n" + Resource.text(OfflineFiles.WORKER);
  }

  /** What is large, for paper, and not needed to read a page: kept once it was opened. */
  static boolean isExtra(String path) {
    return path.endsWith(".pdf") || CHART.matcher(path).matches();
  }

  private static SortedMap<String, String> only(
      SortedMap<String, String> fingerprints, Predicate<String> wanted) {
    SortedMap<String, String> some = new TreeMap<>(fingerprints);
    some.keySet().removeIf(wanted.negate());
    return some;
  }
}
