package io.faultwright.site;

import io.faultwright.offline.Fingerprint;
import io.faultwright.offline.OfflineFiles;
import io.faultwright.offline.Release;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** A site of a few small files, as devices see one, in any revision. */
final class SmallSite {
  private final SortedMap<String, String> files = new TreeMap<>();
  private final SortedMap<String, String> symptoms = new TreeMap<>();
  private final String revision;

  SmallSite(String revision) {
    this.revision = revision;
    files.put("index.html", page("Start", ""));
    files.put("symptom/ice.html", page("Ice is left", "../"));
    files.put("symptom/warm.html", page("Too warm", "../"));
    files.put("guide/h\u00e4 1.html", page("Hoses", "../"));
    files.put("diagnose.html", page("Diagnosis", "").replace("</head>", JOB + "</head>"));
    files.put(
        "job.js",
        "window.faultwright = window.faultwright || {};"
            + "faultwright.job = {isOpen: () => location.hash.length > 1};");
    files.put("style.css", "body { margin: 0 }");
    files.put("charts/ice-1.svg", "<svg xmlns='http://www.w3.org/2000/svg'/>");
    files.put("handbook.pdf", "%PDF " + "x".repeat(1000));
    symptom("ice", "Ice is left after a defrost", "1");
    symptom("warm", "The room is too warm", "1");
  }

  private static final String JOB = "<script src='job.js' defer></script>";

  private String page(String title, String root) {
    return "<!DOCTYPE html><html lang='en'><head><meta charset='utf-8'><title>"
        + title
        + "</title><link rel='icon' href='"
        + root
        + "icon.svg'><script src='"
        + root
        + "offline.js' defer></script></head><body><h1>"
        + title
        + "</h1><p id='revision'>"
        + (title.equals("Start") ? revision : "")
        + "</p></body></html>";
  }

  SmallSite symptom(String id, String title, String rules) {
    String path = "guided/symptom-" + id + ".js";
    files.put(path, "faultwright.symptom({rules: '" + rules + "'});");
    symptoms.put(path, title);
    return this;
  }

  SmallSite without(String id) {
    files.remove("guided/symptom-" + id + ".js");
    symptoms.remove("guided/symptom-" + id + ".js");
    return this;
  }

  SortedMap<String, byte[]> published() {
    Release release =
        new Release(
            "Small handbook",
            "en",
            "ltr",
            revision,
            "2026-03-02",
            symptoms,
            List.of(),
            new TreeMap<>());
    SortedMap<String, byte[]> site = new TreeMap<>();
    files.forEach((path, text) -> site.put(path, text.getBytes(StandardCharsets.UTF_8)));
    site.putAll(OfflineFiles.besidesTheWorker(release));
    SortedMap<String, String> fingerprints = new TreeMap<>();
    site.forEach((path, content) -> fingerprints.put(path, Fingerprint.of(content)));
    site.put(OfflineFiles.WORKER, OfflineFiles.worker(release, fingerprints));
    return site;
  }
}
