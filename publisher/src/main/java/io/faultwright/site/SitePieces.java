package io.faultwright.site;

import io.faultwright.diagnostic.Problem;
import io.faultwright.find.Findable;
import io.faultwright.find.SearchFiles;
import io.faultwright.font.Fonts;
import io.faultwright.guided.GuidedFiles;
import io.faultwright.guided.GuidedScript;
import io.faultwright.layout.ChartPage;
import io.faultwright.model.Excerpts;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.offline.OfflineFiles;
import io.faultwright.page.BookPages;
import io.faultwright.page.Edition;
import io.faultwright.page.Frame;
import io.faultwright.page.Listed;
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
import java.util.TreeMap;
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
  private final Excerpts excerpts;
  private final SiteHtml html = new SiteHtml();
  private final Fingerprints fingerprints = new Fingerprints();
  private final Fingerprints things;
  private final Fingerprint besidesSymptoms;

  /**
   * The files in one language.
   *
   * @param kb in that language
   * @param drawn its charts
   * @param all the languages
   * @param things fingerprints of what the knowledge base holds
   */
  SitePieces(
      KnowledgeBase kb,
      Edition edition,
      SortedMap<String, Drawn> drawn,
      Options options,
      Tongue tongue,
      List<Tongue> all,
      Fingerprints things) {
    this.folder = tongue.folder();
    this.tongue = tongue;
    this.languages = List.copyOf(all);
    this.kb = kb;
    this.excerpts = new Excerpts(kb);
    this.edition = edition;
    this.drawn = drawn;
    this.options = options;
    this.site = new SitePages(kb, edition, tongue, all);
    this.things = things;
    this.besidesSymptoms = besidesSymptoms();
  }

  /** All that the pages of faults and readings stand on, but for what they list. */
  private Fingerprint besidesSymptoms() {
    SortedMap<String, String> titles = new TreeMap<>();
    kb.symptoms().forEach((id, symptom) -> titles.put(id, symptom.title()));
    SortedMap<String, String> guides = new TreeMap<>();
    kb.guides().forEach((id, guide) -> guides.put(id, guide.title()));
    return things.of(
        kb.besidesSymptoms(), List.of(titles, guides), options.draft(), tongue, languages);
  }

  /** The files, in a fixed order; those that take longest first, lest others wait for them. */
  List<Piece> all() {
    return Stream.of(book(), search(), pages(), charts(), shared(), cards(), diagnosis(), curves())
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
    return site.plans().stream()
        .map(plan -> plan.symptom().map(id -> symptomPage(plan, id)).orElseGet(() -> page(plan)));
  }

  private Piece page(SitePages.Plan plan) {
    return plan.listed().map(listed -> listing(plan, listed)).orElseGet(() -> gathered(plan));
  }

  /** Of these there are thousands; what one stands on is told without gathering it. */
  private Piece listing(SitePages.Plan plan, Listed listed) {
    String path = folder + plan.path();
    return new Piece(
        path,
        () ->
            Piece.Begun.file(
                path,
                things.of(besidesSymptoms.toString(), path, listed),
                () -> utf8(html.print(plan.page().get()))));
  }

  /** Gathering what stands on a page is quick; so it is printed where that has changed. */
  private Piece gathered(SitePages.Plan plan) {
    String path = folder + plan.path();
    return new Piece(
        path,
        () -> {
          Page page = plan.page().get();
          return Piece.Begun.file(path, fingerprints.of(page), () -> utf8(html.print(page)));
        });
  }

  /** Written from what its charts are drawn from, and from them. */
  private Piece symptomPage(SitePages.Plan plan, String symptom) {
    return ofSymptom(
        folder + plan.path(), symptom, excerpt -> utf8(html.print(written(excerpt, symptom))));
  }

  private Page written(KnowledgeBase excerpt, String symptom) {
    return new SitePages(excerpt, edition, tongue, languages)
        .symptom(excerpt.symptoms().get(symptom))
        .page()
        .get();
  }

  /** Makes something of all that belongs to a symptom. */
  private interface OfExcerpt {
    byte[] bytes(KnowledgeBase excerpt) throws IOException;
  }

  private Piece ofSymptom(String path, String symptom, OfExcerpt file) {
    Piece.Content content = () -> file.bytes(excerpts.forDrawing(kb.symptoms().get(symptom)));
    return Optional.ofNullable(drawn.get(symptom))
        .map(charts -> fingerprints.of(charts.from(), options.draft(), options.pdf(), languages))
        .map(from -> Piece.file(path, from, content))
        .orElseGet(() -> Piece.file(path, content));
  }

  /** Made before, as the pages show them too; the data of each symptom with its charts. */
  private Stream<Piece> charts() {
    return drawn.entrySet().stream()
        .map(
            one ->
                Piece.ready("of the charts of " + folder + one.getKey(), one.getValue().files()));
  }

  private Stream<Piece> pictures() {
    return options.pictures().entrySet().stream()
        .map(picture -> Piece.file(SitePaths.picture(picture.getKey()), picture::getValue));
  }

  private Stream<Piece> book() {
    return options.pdf()
        ? Stream.of(new Piece(bookName(), () -> new Piece.Begun(bookInputs(), this::printedBook)))
        : Stream.empty();
  }

  /** A draft's findings and the differences between revisions are not looked up. */
  private Optional<Fingerprint> bookInputs() {
    return options.draft() || options.since().isPresent()
        ? Optional.empty()
        : Optional.of(
            Fingerprints.inWrittenOrder()
                .of(
                    kb,
                    drawn.values().stream().map(Drawn::from).toList(),
                    options.pictures(),
                    options.paper()));
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
    return options.pdf()
        ? Edition.withCards(kb).stream()
            .map(
                id ->
                    ofSymptom(folder + SitePaths.card(id), id, excerpt -> printedCard(id, excerpt)))
        : Stream.empty();
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
        new Piece(folder + SitePaths.SEARCH_INDEX, this::searchIndex),
        Piece.file(folder + SitePaths.OFFLINE_WORDS, this::offlineWords));
  }

  private byte[] offlineWords() {
    Words words = Words.of(kb.handbook().language());
    return OfflineFiles.words(words.calledFor(OfflineFiles.script()));
  }

  private Piece.Begun searchIndex() {
    Words words = Words.of(kb.handbook().language());
    Findable findable = Findable.of(kb, site.refrigerants());
    SortedMap<String, String> said = words.calledFor(SearchFiles.script());
    return Piece.Begun.file(
        folder + SitePaths.SEARCH_INDEX,
        fingerprints.of(findable, said),
        () -> utf8(SearchFiles.index(findable, said)));
  }

  private Stream<Piece> diagnosis() {
    return Stream.of(
        Piece.file(folder + SitePaths.DIAGNOSIS_SCRIPT, () -> utf8(GuidedScript.text())),
        Piece.file(
            folder + SitePaths.DIAGNOSIS_HANDBOOK,
            () -> new GuidedFiles(kb).handbook(options.draft())));
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
