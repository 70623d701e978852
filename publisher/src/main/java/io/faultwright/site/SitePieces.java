package io.faultwright.site;

import io.faultwright.diagnostic.Problem;
import io.faultwright.find.SearchFiles;
import io.faultwright.flow.Imprint;
import io.faultwright.font.Fonts;
import io.faultwright.guided.GuidedFiles;
import io.faultwright.guided.GuidedScript;
import io.faultwright.layout.ChartPage;
import io.faultwright.model.Excerpts;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.offline.OfflineFiles;
import io.faultwright.page.BookPages;
import io.faultwright.page.ChartSheet;
import io.faultwright.page.Edition;
import io.faultwright.page.Frame;
import io.faultwright.page.Page;
import io.faultwright.page.SitePages;
import io.faultwright.page.SitePaths;
import io.faultwright.page.Tongue;
import io.faultwright.piece.Fingerprint;
import io.faultwright.piece.Fingerprints;
import io.faultwright.piece.Made;
import io.faultwright.piece.Piece;
import io.faultwright.render.html.BookHtml;
import io.faultwright.render.html.SiteHtml;
import io.faultwright.render.html.SiteStyle;
import io.faultwright.render.pdf.ChartPdf;
import io.faultwright.render.pdf.PdfBook;
import io.faultwright.render.pdf.PdfPrinter;
import io.faultwright.words.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Every file of a published handbook, before it is made; a line of {@link #all} for each kind. What
 * takes long says what it is made from, so that it is not made again from the same; what is made
 * quickly is always made.
 */
final class SitePieces {
  private final String folder;
  private final Tongue tongue;
  private final List<Tongue> languages;
  private final KnowledgeBase kb;
  private final Edition edition;
  private final SortedMap<String, Drawn> drawn;
  private final Options options;
  private final SitePages site;
  private final SiteHtml html = new SiteHtml();

  /**
   * The files in one language.
   *
   * @param kb in that language
   * @param drawn its charts
   * @param all the languages
   */
  SitePieces(
      KnowledgeBase kb,
      Edition edition,
      SortedMap<String, Drawn> drawn,
      Options options,
      Tongue tongue,
      List<Tongue> all) {
    this.folder = tongue.folder();
    this.tongue = tongue;
    this.languages = List.copyOf(all);
    this.kb = kb;
    this.edition = edition;
    this.drawn = drawn;
    this.options = options;
    this.site = new SitePages(kb, edition, tongue, all);
  }

  /** The files, in a fixed order. */
  List<Piece> all() {
    return Stream.of(pages(), charts(), shared(), book(), cards(), search(), diagnosis(), curves())
        .flatMap(pieces -> pieces)
        .toList();
  }

  /** What all languages share stands at the root. */
  private Stream<Piece> shared() {
    return folder.isEmpty()
        ? Stream.of(pictures(), style(), fonts()).flatMap(pieces -> pieces)
        : Stream.empty();
  }

  /** Head and foot of every page. */
  Frame frame() {
    return site.frame();
  }

  /** How many pages there are. */
  int pageCount() {
    return site.plans().size();
  }

  /** Links in guides that lead nowhere. */
  List<Problem> problems() {
    return site.problems();
  }

  /** The name of the book. */
  String bookName() {
    return folder + SitePaths.BOOK;
  }

  private Stream<Piece> pages() {
    Fingerprints fingerprints = Fingerprints.withoutPlaces();
    Excerpts excerpts = new Excerpts(kb);
    return site.plans().stream()
        .map(
            plan ->
                plan.symptom()
                    .map(id -> symptomPage(plan.path(), id, excerpts, fingerprints))
                    .orElseGet(() -> page(plan)));
  }

  private Piece page(SitePages.Plan plan) {
    return Piece.file(folder + plan.path(), () -> utf8(html.print(plan.page().get())));
  }

  /**
   * Written from what belongs to the symptom, and from its charts; the order of its rules counts.
   */
  private Piece symptomPage(
      String path, String symptom, Excerpts excerpts, Fingerprints fingerprints) {
    KnowledgeBase excerpt = excerpts.forDrawing(kb.symptoms().get(symptom));
    Fingerprint order = order(kb.symptoms().get(symptom));
    Optional<Fingerprint> charts = Optional.ofNullable(drawn.get(symptom)).map(Drawn::from);
    Fingerprint inputs =
        fingerprints.of(excerpt, order, charts, options.draft(), options.pdf(), tongue, languages);
    return Piece.file(folder + path, inputs, () -> utf8(html.print(written(excerpt, symptom))));
  }

  /** A symptom with the order in which its rules are written; they are printed in it. */
  private static Fingerprint order(Symptom symptom) {
    return Fingerprints.inWrittenOrder().of(symptom);
  }

  private List<Fingerprint> orders() {
    return kb.symptoms().values().stream().map(SitePieces::order).toList();
  }

  private Page written(KnowledgeBase excerpt, String symptom) {
    return new SitePages(excerpt, edition, tongue, languages)
        .symptom(excerpt.symptoms().get(symptom))
        .page()
        .get();
  }

  /** Drawn before, as the pages show them too. */
  private Stream<Piece> charts() {
    return edition.charts().entrySet().stream()
        .flatMap(symptom -> charts(symptom.getKey(), symptom.getValue()));
  }

  private Stream<Piece> charts(String symptom, List<ChartSheet> sheets) {
    return IntStream.range(0, sheets.size())
        .mapToObj(
            i ->
                Piece.file(
                    folder + SitePaths.chart(symptom, i + 1), () -> utf8(sheets.get(i).svg())));
  }

  private Stream<Piece> pictures() {
    return options.pictures().entrySet().stream()
        .map(picture -> Piece.file(SitePaths.picture(picture.getKey()), picture::getValue));
  }

  private Stream<Piece> book() {
    return options.pdf()
        ? Stream.of(new Piece(bookName(), bookInputs(), this::printedBook))
        : Stream.empty();
  }

  /** A draft's findings and the differences between revisions are not looked up. */
  private Optional<Fingerprint> bookInputs() {
    return options.draft() || options.since().isPresent()
        ? Optional.empty()
        : Optional.of(
            Fingerprints.withoutPlaces()
                .of(kb, orders(), edition.charts(), options.pictures(), options.paper()));
  }

  private Made printedBook() throws IOException {
    var book = new BookPages(kb, edition, options.paper()).book();
    PdfBook pdf = new PdfPrinter().print(new BookHtml().print(book, options.paper()), book.date());
    return Made.of(bookName(), pdf.bytes(), List.of(Integer.toString(pdf.pages()), pdf.undrawn()));
  }

  private static Stream<Piece> style() {
    return Stream.of(Piece.file(SitePaths.STYLE, () -> utf8(SiteStyle.css(SitePaths.FONTS))));
  }

  private static Stream<Piece> fonts() {
    return Stream.concat(
        Fonts.web().stream().map(font -> Piece.file(SitePaths.FONTS + font.name(), font::bytes)),
        Stream.of(Piece.file(SitePaths.FONTS + "OFL.txt", Fonts::licence)));
  }

  /** The pocket card of each symptom, four to a sheet. */
  private Stream<Piece> cards() {
    Fingerprints fingerprints = Fingerprints.withoutPlaces();
    Excerpts excerpts = new Excerpts(kb);
    return options.pdf()
        ? Edition.withCards(kb).stream().map(id -> card(id, excerpts, fingerprints))
        : Stream.empty();
  }

  private Piece card(String symptom, Excerpts excerpts, Fingerprints fingerprints) {
    KnowledgeBase excerpt = excerpts.forDrawing(kb.symptoms().get(symptom));
    Imprint imprint = Imprint.of(kb.handbook(), options.draft());
    Fingerprint inputs = fingerprints.of(symptom, excerpt, imprint, options.paper());
    return Piece.file(
        folder + SitePaths.card(symptom), inputs, () -> printedCard(symptom, excerpt));
  }

  private byte[] printedCard(String symptom, KnowledgeBase excerpt) throws IOException {
    ChartPage card =
        new SingleChart(symptom, Optional.empty(), Optional.empty())
            .card(excerpt, options.draft(), options.paper(), true);
    ChartPdf pdf = new ChartPdf(card.title(), kb.handbook().language(), kb.handbook().date());
    return pdf.write(List.of(card)).bytes();
  }

  private Stream<Piece> search() {
    return Stream.of(
        Piece.file(folder + SitePaths.SEARCH_SCRIPT, () -> utf8(SearchFiles.script())),
        Piece.file(folder + SitePaths.SEARCH_INDEX, () -> utf8(searchIndex())),
        Piece.file(folder + SitePaths.OFFLINE_WORDS, this::offlineWords));
  }

  private byte[] offlineWords() {
    Words words = Words.of(kb.handbook().language());
    return OfflineFiles.words(words.calledFor(OfflineFiles.script()));
  }

  private String searchIndex() {
    Words words = Words.of(kb.handbook().language());
    return SearchFiles.index(kb, site.refrigerants(), words.calledFor(SearchFiles.script()));
  }

  /** The data of each symptom were made with its charts. */
  private Stream<Piece> diagnosis() {
    return Stream.concat(
        Stream.of(
            Piece.file(folder + SitePaths.DIAGNOSIS_SCRIPT, () -> utf8(GuidedScript.text())),
            Piece.file(
                folder + SitePaths.DIAGNOSIS_HANDBOOK,
                () -> new GuidedFiles(kb).handbook(options.draft()))),
        drawn.entrySet().stream()
            .map(
                one ->
                    Piece.file(
                        folder + SitePaths.diagnosis(one.getKey()), one.getValue()::diagnosis)));
  }

  private Stream<Piece> curves() {
    return new GuidedFiles(kb)
        .curves().entrySet().stream()
            .map(curve -> Piece.file(folder + curve.getKey(), curve::getValue));
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
