package io.faultwright.site;

import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.offline.OfflineFiles;
import io.faultwright.offline.SingleFile;
import io.faultwright.output.AtomicFile;
import io.faultwright.output.AtomicFolder;
import io.faultwright.output.Sink;
import io.faultwright.page.Tongue;
import io.faultwright.piece.FileContent;
import io.faultwright.piece.Ledger;
import io.faultwright.piece.Workshop;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Publishes a handbook into a folder, whole or not at all. */
public final class SitePublisher {
  private final Workshop workshop;

  /** A publisher that makes everything anew. */
  public SitePublisher() {
    this(new Workshop(Ledger.empty()));
  }

  /**
   * A publisher.
   *
   * @param workshop makes the files, as far as they were not made before
   */
  public SitePublisher(Workshop workshop) {
    this.workshop = workshop;
  }

  /**
   * Publishes, in all languages of the handbook.
   *
   * @param drawn the charts of each symptom, by its id, by the tag of the language
   * @param to the folder; it is replaced
   * @throws Unreadable where a guide links to nothing, except in drafts
   */
  public Summary publish(
      KnowledgeBase kb, SortedMap<String, SortedMap<String, Drawn>> drawn, Options options, Path to)
      throws IOException {
    Plan plan = Plan.of(kb, drawn, options, workshop.fingerprints());
    new AtomicFolder(to)
        .publish(
            sink -> {
              fill(sink, plan);
              Optional<byte[]> ledger = workshop.ledger();
              if (ledger.isPresent()) {
                sink.write(Ledger.NAME, ledger.get());
              }
            });
    return summary(plan);
  }

  /**
   * Publishes into a folder that is filled by the caller, and that is not published over again.
   *
   * @param drawn the charts of each symptom, by its id, by the tag of the language
   * @throws Unreadable where a guide links to nothing, except in drafts
   */
  public Summary publishInto(
      KnowledgeBase kb,
      SortedMap<String, SortedMap<String, Drawn>> drawn,
      Options options,
      Sink sink)
      throws IOException {
    Plan plan = Plan.of(kb, drawn, options, workshop.fingerprints());
    fill(sink, plan);
    return summary(plan);
  }

  /**
   * Publishes everything but the book as one page in one file; other languages in a file each, with
   * the language in its name.
   *
   * @param drawn the charts of each symptom, by its id, by the tag of the language
   * @param file in the handbook's own language
   * @throws Unreadable where a guide links to nothing, except in drafts
   */
  public Summary publishAsOneFile(
      KnowledgeBase kb,
      SortedMap<String, SortedMap<String, Drawn>> drawn,
      Options options,
      Path file)
      throws IOException {
    Plan plan = Plan.of(kb, drawn, options, workshop.fingerprints());
    SortedMap<String, byte[]> files = new TreeMap<>(OfflineFiles.besidesTheWorker(plan.release()));
    workshop.make(plan.pieces(), made -> read(made.files(), files));
    List<Tongue> all = new Languages(kb).all();
    List<String> folders = all.stream().map(Tongue::folder).toList();
    for (Tongue tongue : all) {
      AtomicFile.write(
          tongue.folder().isEmpty() ? file : named(file, tongue),
          SingleFile.of(files, tongue.folder(), folders));
    }
    return summary(plan);
  }

  private static void read(SortedMap<String, FileContent> made, SortedMap<String, byte[]> into)
      throws IOException {
    for (Map.Entry<String, FileContent> file : made.entrySet()) {
      into.put(file.getKey(), file.getValue().bytes());
    }
  }

  private static Path named(Path file, Tongue tongue) {
    String name = file.getFileName().toString();
    int ending = name.lastIndexOf('.');
    return file.resolveSibling(
        name.substring(0, ending) + "." + tongue.tag() + name.substring(ending));
  }

  private Summary summary(Plan plan) {
    List<List<String>> books =
        plan.sites().stream().flatMap(site -> workshop.notes(site.bookName()).stream()).toList();
    return new Summary(
        plan.sites().stream().mapToInt(SitePieces::pageCount).sum(),
        plan.charts(),
        books.stream().mapToInt(notes -> Integer.parseInt(notes.get(0))).sum(),
        books.stream().map(notes -> notes.get(1)).distinct().collect(Collectors.joining()),
        plan.problems());
  }

  /** The worker comes last, since it lists all other files. */
  private void fill(Sink sink, Plan plan) throws IOException {
    NotingSink noting = new NotingSink(sink, workshop.digests());
    workshop.make(plan.pieces(), made -> write(noting, made.files()));
    write(noting, fresh(OfflineFiles.besidesTheWorker(plan.release())));
    sink.write(OfflineFiles.WORKER, OfflineFiles.worker(plan.release(), noting.fingerprints()));
  }

  private static void write(NotingSink sink, SortedMap<String, FileContent> files)
      throws IOException {
    for (Map.Entry<String, FileContent> file : files.entrySet()) {
      sink.write(file.getKey(), file.getValue());
    }
  }

  private static SortedMap<String, FileContent> fresh(SortedMap<String, byte[]> files) {
    SortedMap<String, FileContent> fresh = new TreeMap<>();
    files.forEach((path, content) -> fresh.put(path, FileContent.of(content)));
    return fresh;
  }
}
