package io.faultwright.site;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.offline.OfflineFiles;
import io.faultwright.offline.Release;
import io.faultwright.page.ChartSheet;
import io.faultwright.page.Edition;
import io.faultwright.page.Frame;
import io.faultwright.page.SitePaths;
import io.faultwright.page.Tongue;
import io.faultwright.piece.Fingerprints;
import io.faultwright.piece.Piece;
import io.faultwright.words.Words;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What is to be published.
 *
 * @param sites the site in each language, the first one at the root
 * @param release what devices tell it from others by
 * @param charts how many drawings there are
 * @param problems links in guides that lead nowhere
 */
record Plan(List<SitePieces> sites, Release release, int charts, List<Problem> problems) {
  /**
   * Plans a site.
   *
   * @param drawn the charts of each symptom, by its id, by the tag of the language
   * @param things fingerprints of what the knowledge base holds
   * @throws Unreadable where a guide links to nothing, except in drafts
   */
  static Plan of(
      KnowledgeBase kb,
      SortedMap<String, SortedMap<String, Drawn>> drawn,
      Options options,
      Fingerprints things) {
    Languages languages = new Languages(kb);
    List<Tongue> tongues = languages.all();
    List<SitePieces> sites =
        tongues.stream()
            .map(
                tongue ->
                    pieces(languages, charts(drawn, tongue), options, tongue, tongues, things))
            .toList();
    List<Problem> problems = sites.get(0).problems();
    if (!problems.isEmpty() && !options.draft()) {
      throw new Unreadable(problems);
    }
    return new Plan(
        sites,
        release(languages.in(tongues.get(0)), sites.get(0).frame()),
        tongues.stream().mapToInt(tongue -> sheets(charts(drawn, tongue))).sum(),
        problems);
  }

  /** Every file of the site but those that devices need to keep it. */
  List<Piece> pieces() {
    return sites.stream().flatMap(site -> site.all().stream()).toList();
  }

  /** Those in a language; none where none were drawn. */
  private static SortedMap<String, Drawn> charts(
      SortedMap<String, SortedMap<String, Drawn>> drawn, Tongue tongue) {
    return drawn.getOrDefault(tongue.tag(), new TreeMap<>());
  }

  private static int sheets(SortedMap<String, Drawn> drawn) {
    return drawn.values().stream().mapToInt(one -> one.sheets().size()).sum();
  }

  private static SitePieces pieces(
      Languages languages,
      SortedMap<String, Drawn> drawn,
      Options options,
      Tongue tongue,
      List<Tongue> all,
      Fingerprints things) {
    SortedMap<String, List<ChartSheet>> charts = new TreeMap<>();
    drawn.forEach((id, one) -> charts.put(id, one.sheets()));
    Edition edition =
        new Edition(
            charts,
            options.findings(),
            options.pictures(),
            options.draft(),
            options.pdf(),
            options.since().map(since -> languages.in(since, tongue)),
            options.bulletin().map(told -> told.with(languages.in(told.since(), tongue))),
            options.releases());
    return new SitePieces(languages.in(tongue), edition, drawn, options, tongue, all, things);
  }

  private static Release release(KnowledgeBase kb, Frame frame) {
    SortedMap<String, String> titles = new TreeMap<>();
    kb.symptoms().forEach((id, symptom) -> titles.put(SitePaths.diagnosis(id), symptom.title()));
    return new Release(
        frame.handbook(),
        frame.language(),
        frame.direction(),
        kb.handbook().revision(),
        kb.handbook().date(),
        titles,
        List.of(),
        Words.of(frame.language()).calledFor(OfflineFiles.script()));
  }
}
