package io.faultwright.site;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.output.AtomicFolder;
import io.faultwright.output.Sink;
import io.faultwright.page.ChartSheet;
import io.faultwright.page.Edition;
import io.faultwright.page.Tongue;
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
    Languages languages = new Languages(kb);
    List<SitePieces> sites =
        languages.all().stream()
            .map(tongue -> pieces(languages, drawn.get(tongue.tag()), options, tongue))
            .toList();
    List<Problem> problems = sites.get(0).problems();
    if (!problems.isEmpty() && !options.draft()) {
      throw new Unreadable(problems);
    }
    List<Piece> pieces = sites.stream().flatMap(site -> site.all().stream()).toList();
    new AtomicFolder(to).publish(sink -> fill(sink, pieces));
    List<List<String>> books =
        sites.stream().flatMap(site -> workshop.notes(site.bookName()).stream()).toList();
    return new Summary(
        sites.stream().mapToInt(SitePieces::pageCount).sum(),
        drawn.values().stream().flatMap(all -> all.values().stream()).mapToInt(this::pages).sum(),
        books.stream().mapToInt(notes -> Integer.parseInt(notes.get(0))).sum(),
        books.stream().map(notes -> notes.get(1)).distinct().collect(Collectors.joining()),
        problems);
  }

  private int pages(Drawn drawn) {
    return drawn.sheets().size();
  }

  private static SitePieces pieces(
      Languages languages, SortedMap<String, Drawn> drawn, Options options, Tongue tongue) {
    SortedMap<String, List<ChartSheet>> charts = new TreeMap<>();
    drawn.forEach((id, one) -> charts.put(id, one.sheets()));
    Edition edition =
        new Edition(
            charts,
            options.findings(),
            options.pictures(),
            options.draft(),
            options.pdf(),
            options.since().map(since -> Languages.in(since, tongue)));
    return new SitePieces(languages.in(tongue), edition, drawn, options, tongue, languages.all());
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
