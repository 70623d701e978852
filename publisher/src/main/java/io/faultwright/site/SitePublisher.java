package io.faultwright.site;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.output.AtomicFolder;
import io.faultwright.output.Sink;
import io.faultwright.page.ChartSheet;
import io.faultwright.page.Edition;
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
    List<Piece> pieces = new SitePieces(kb, edition, drawn, options).all();
    new AtomicFolder(to).publish(sink -> fill(sink, pieces));
    Optional<List<String>> book = workshop.notes(SitePaths.BOOK);
    return new Summary(
        site.plans().size(),
        charts.values().stream().mapToInt(List::size).sum(),
        book.map(notes -> Integer.parseInt(notes.get(0))).orElse(0),
        book.map(notes -> notes.get(1)).orElse(""),
        problems);
  }

  private void fill(Sink sink, List<Piece> pieces) throws IOException {
    workshop.make(pieces, made -> write(sink, made.files()));
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
}
