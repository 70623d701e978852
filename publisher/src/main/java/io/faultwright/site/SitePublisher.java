package io.faultwright.site;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.find.SearchFiles;
import io.faultwright.font.Fonts;
import io.faultwright.font.Fonts.WebFont;
import io.faultwright.guided.GuidedFiles;
import io.faultwright.guided.GuidedScript;
import io.faultwright.layout.ChartPage;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.offline.OfflineFiles;
import io.faultwright.offline.Release;
import io.faultwright.offline.SingleFile;
import io.faultwright.output.AtomicFile;
import io.faultwright.output.AtomicFolder;
import io.faultwright.output.Sink;
import io.faultwright.page.Book;
import io.faultwright.page.BookPages;
import io.faultwright.page.ChartSheet;
import io.faultwright.page.Edition;
import io.faultwright.page.Frame;
import io.faultwright.page.Page;
import io.faultwright.page.SitePages;
import io.faultwright.page.SitePaths;
import io.faultwright.render.html.BookHtml;
import io.faultwright.render.html.SiteHtml;
import io.faultwright.render.html.SiteStyle;
import io.faultwright.render.pdf.ChartPdf;
import io.faultwright.render.pdf.PdfBook;
import io.faultwright.render.pdf.PdfPrinter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Publishes a handbook into a folder, whole or not at all. */
public final class SitePublisher {
  /**
   * Publishes.
   *
   * @param drawn the charts of each symptom, by its id
   * @param to the folder; it is replaced
   * @throws Unreadable where a guide links to nothing, except in drafts
   */
  public Summary publish(KnowledgeBase kb, SortedMap<String, Drawn> drawn, Options options, Path to)
      throws IOException {
    Made made = made(kb, drawn, options);
    new AtomicFolder(to).publish(sink -> writeForDevices(sink, made));
    return made.summary();
  }

  /**
   * Publishes everything as one page in one file, without the book.
   *
   * @param drawn the charts of each symptom, by its id
   * @throws Unreadable where a guide links to nothing, except in drafts
   */
  public Summary publishAsOneFile(
      KnowledgeBase kb, SortedMap<String, Drawn> drawn, Options options, Path file)
      throws IOException {
    Made made = made(kb, drawn, options);
    SortedMap<String, byte[]> files = new TreeMap<>();
    made.files().fill(files::put);
    files.putAll(OfflineFiles.besidesTheWorker(made.release()));
    AtomicFile.write(file, SingleFile.of(files));
    return made.summary();
  }

  /** The worker comes last: it lists all other files. */
  private static void writeForDevices(Sink sink, Made made) throws IOException {
    FingerprintedSink noting = new FingerprintedSink(sink);
    made.files().fill(noting);
    for (Map.Entry<String, byte[]> file :
        OfflineFiles.besidesTheWorker(made.release()).entrySet()) {
      noting.write(file.getKey(), file.getValue());
    }
    sink.write(
        OfflineFiles.WORKER, OfflineFiles.worker(made.release(), noting.fingerprints()));
  }

  /**
   * A handbook ready to be written.
   *
   * @param files writes its files
   * @param release what devices tell it from others by
   * @param summary what it holds
   */
  private record Made(Sink.Filler files, Release release, Summary summary) {}

  private static Made made(KnowledgeBase kb, SortedMap<String, Drawn> drawn, Options options)
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
    List<Page> pages = site.all();
    Optional<PdfBook> book =
        options.pdf() ? Optional.of(book(kb, edition, options)) : Optional.empty();
    SortedMap<String, byte[]> cards = options.pdf() ? cards(kb, options) : new TreeMap<>();
    Summary summary =
        new Summary(
            pages.size(),
            count(charts),
            book.map(PdfBook::pages).orElse(0),
            book.map(PdfBook::undrawn).orElse(""),
            problems);
    return new Made(
        sink -> {
          fill(sink, pages, book, edition, options);
          writeCards(sink, cards);
          writeSearch(sink, kb, site);
          writeDiagnosis(sink, kb, drawn, options.draft());
        },
        release(kb, pages.get(0).frame(), drawn.keySet()),
        summary);
  }

  /** What devices tell the handbook's revisions apart by. */
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

  private static PdfBook book(KnowledgeBase kb, Edition edition, Options options)
      throws IOException {
    Book book = new BookPages(kb, edition, options.paper()).book();
    return new PdfPrinter().print(new BookHtml().print(book, options.paper()), book.date());
  }

  /** The pocket card of each symptom, four to a sheet. */
  private static SortedMap<String, byte[]> cards(KnowledgeBase kb, Options options)
      throws IOException {
    SortedMap<String, byte[]> cards = new TreeMap<>();
    for (String symptom : Edition.withCards(kb)) {
      ChartPage card =
          new SingleChart(symptom, Optional.empty(), Optional.empty())
              .card(kb, options.draft(), options.paper(), true);
      ChartPdf pdf = new ChartPdf(card.title(), kb.handbook().language(), kb.handbook().date());
      cards.put(symptom, pdf.write(List.of(card)).bytes());
    }
    return cards;
  }

  private static void writeCards(Sink sink, SortedMap<String, byte[]> cards) throws IOException {
    for (Map.Entry<String, byte[]> card : cards.entrySet()) {
      sink.write(SitePaths.card(card.getKey()), card.getValue());
    }
  }

  private static int count(SortedMap<String, List<ChartSheet>> charts) {
    return charts.values().stream().mapToInt(List::size).sum();
  }

  private static void fill(
      Sink sink, List<Page> pages, Optional<PdfBook> book, Edition edition, Options options)
      throws IOException {
    SiteHtml html = new SiteHtml();
    for (Page page : pages) {
      sink.write(page.path(), utf8(html.print(page)));
    }
    for (Map.Entry<String, List<ChartSheet>> symptom : edition.charts().entrySet()) {
      writeCharts(sink, symptom.getKey(), symptom.getValue());
    }
    for (Map.Entry<String, byte[]> picture : options.pictures().entrySet()) {
      sink.write(SitePaths.picture(picture.getKey()), picture.getValue());
    }
    if (book.isPresent()) {
      sink.write(SitePaths.BOOK, book.get().bytes());
    }
    writeStyle(sink);
  }

  private static void writeCharts(Sink sink, String symptom, List<ChartSheet> drawings)
      throws IOException {
    for (int i = 0; i < drawings.size(); i++) {
      sink.write(SitePaths.chart(symptom, i + 1), utf8(drawings.get(i).svg()));
    }
  }

  private static void writeSearch(Sink sink, KnowledgeBase kb, SitePages site) throws IOException {
    sink.write(SitePaths.SEARCH_SCRIPT, utf8(SearchFiles.script()));
    sink.write(SitePaths.SEARCH_INDEX, utf8(SearchFiles.index(kb, site.refrigerants())));
  }

  private static void writeDiagnosis(
      Sink sink, KnowledgeBase kb, SortedMap<String, Drawn> drawn, boolean draft)
      throws IOException {
    GuidedFiles guided = new GuidedFiles(kb);
    sink.write(SitePaths.DIAGNOSIS_SCRIPT, utf8(GuidedScript.text()));
    sink.write(SitePaths.DIAGNOSIS_HANDBOOK, guided.handbook(draft));
    for (Map.Entry<String, Drawn> symptom : drawn.entrySet()) {
      sink.write(SitePaths.diagnosis(symptom.getKey()), symptom.getValue().diagnosis());
    }
    for (Map.Entry<String, byte[]> curve : guided.curves().entrySet()) {
      sink.write(curve.getKey(), curve.getValue());
    }
  }

  private static void writeStyle(Sink sink) throws IOException {
    sink.write(SitePaths.STYLE, utf8(SiteStyle.css(SitePaths.FONTS)));
    for (WebFont font : Fonts.web()) {
      sink.write(SitePaths.FONTS + font.name(), font.bytes());
    }
    sink.write(SitePaths.FONTS + "OFL.txt", Fonts.licence());
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
