package io.faultwright.site;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.offline.OfflineFiles;
import io.faultwright.offline.Release;
import io.faultwright.offline.SingleFile;
import io.faultwright.output.AtomicFile;
import io.faultwright.output.AtomicFolder;
import io.faultwright.output.Sink;
import io.faultwright.page.ChartSheet;
import io.faultwright.page.Edition;
import io.faultwright.page.Frame;
import io.faultwright.page.SitePages;
import io.faultwright.page.SitePaths;
import io.faultwright.piece.Ledger;
import io.faultwright.piece.Piece;
import io.faultwright.piece.Workshop;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

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
   * Publishes.
   *
   * @param drawn the charts of each symptom, by its id
   * @param to the folder; it is replaced
   * @throws Unreadable where a guide links to nothing, except in drafts
   */
  public Summary publish(KnowledgeBase kb, SortedMap<String, Drawn> drawn, Options options, Path to)
      throws IOException {
    Plan plan = plan(kb, drawn, options);
    new AtomicFolder(to).publish(sink -> fill(sink, plan));
    return summary(plan);
  }

  /**
   * Publishes everything but the book as one page in one file.
   *
   * @param drawn the charts of each symptom, by its id
   * @throws Unreadable where a guide links to nothing, except in drafts
   */
  public Summary publishAsOneFile(
      KnowledgeBase kb, SortedMap<String, Drawn> drawn, Options options, Path file)
      throws IOException {
    Plan plan = plan(kb, drawn, options);
    SortedMap<String, byte[]> files = new TreeMap<>(OfflineFiles.besidesTheWorker(plan.release()));
    workshop.make(plan.pieces(), made -> files.putAll(made.files()));
    AtomicFile.write(file, SingleFile.of(files));
    return summary(plan);
  }

  /**
   * What is to be published.
   *
   * @param pieces everything but what devices need to keep it
   * @param release what devices tell it from others by
   * @param problems links in guides that lead nowhere
   */
  private record Plan(
      List<Piece> pieces, Release release, int pages, int charts, List<Problem> problems) {}

  private static Plan plan(KnowledgeBase kb, SortedMap<String, Drawn> drawn, Options options) {
    SortedMap<String, List<ChartSheet>> charts = new TreeMap<>();
    drawn.forEach((id, one) -> charts.put(id, one.sheets()));
    Edition edition =
        new Edition(
            charts,
            options.findings(),
            options.pictures(),
            options.draft(),
            options.pdf(),
            options.since());
    SitePages site = new SitePages(kb, edition);
    List<Problem> problems = site.problems();
    if (!problems.isEmpty() && !options.draft()) {
      throw new Unreadable(problems);
    }
    return new Plan(
        new SitePieces(kb, edition, drawn, options).all(),
        release(kb, site.frame(), drawn.keySet()),
        site.plans().size(),
        charts.values().stream().mapToInt(List::size).sum(),
        problems);
  }

  private static Release release(KnowledgeBase kb, Frame frame, Set<String> symptoms) {
    SortedMap<String, String> titles = new TreeMap<>();
    symptoms.forEach(id -> titles.put(SitePaths.diagnosis(id), kb.symptoms().get(id).title()));
    return new Release(
        frame.handbook(),
        frame.language(),
        frame.direction(),
        kb.handbook().revision(),
        kb.handbook().date().toString(),
        titles,
        List.of(),
        new TreeMap<>());
  }

  /** The worker comes last, since it lists all other files; the ledger is no part of the site. */
  private void fill(Sink sink, Plan plan) throws IOException {
    FingerprintedSink noting = new FingerprintedSink(sink);
    workshop.make(plan.pieces(), made -> write(noting, made.files()));
    write(noting, OfflineFiles.besidesTheWorker(plan.release()));
    sink.write(OfflineFiles.WORKER, OfflineFiles.worker(plan.release(), noting.fingerprints()));
    Optional<byte[]> ledger = workshop.ledger();
    if (ledger.isPresent()) {
      sink.write(Ledger.NAME, ledger.get());
    }
  }

  private static void write(Sink sink, SortedMap<String, byte[]> files) throws IOException {
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      sink.write(file.getKey(), file.getValue());
    }
  }

  private Summary summary(Plan plan) {
    Optional<List<String>> book = workshop.notes(SitePaths.BOOK);
    return new Summary(
        plan.pages(),
        plan.charts(),
        book.map(notes -> Integer.parseInt(notes.get(0))).orElse(0),
        book.map(notes -> notes.get(1)).orElse(""),
        plan.problems());
  }
}
