package io.faultwright.site;

import io.faultwright.layout.Paper;
import io.faultwright.model.Excerpts;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.page.ChartSheet;
import io.faultwright.page.Edition;
import io.faultwright.page.Page;
import io.faultwright.page.PrintedCopies;
import io.faultwright.page.PrintedCopies.ChartPages;
import io.faultwright.page.PrintedCopies.Fresh;
import io.faultwright.page.SitePages;
import io.faultwright.page.SitePaths;
import io.faultwright.page.Target;
import io.faultwright.page.Target.Kind;
import io.faultwright.page.Tongue;
import io.faultwright.piece.Fingerprint;
import io.faultwright.piece.Ledger;
import io.faultwright.piece.Workshop;
import io.faultwright.render.svg.ChartSvg;
import io.faultwright.words.Words;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Which printed copies of an earlier revision are no longer right: both revisions are drawn and
 * written, under the number and date of the new one, and compared. What is made from the same is
 * not drawn again.
 */
final class PrintedDifferences {
  private static final boolean DRAFT = false;

  private final KnowledgeBase before;
  private final KnowledgeBase after;
  private final Paper paper;

  PrintedDifferences(KnowledgeBase before, KnowledgeBase after, Paper paper) {
    this.before = before.datedLike(after);
    this.after = after;
    this.paper = paper;
  }

  /** The differences, by the tag of the language. */
  SortedMap<String, PrintedCopies> all() throws IOException {
    SortedSet<String> touched = touched();
    return all(touched, drawn(after, touched));
  }

  /**
   * The same where the new revision is drawn already.
   *
   * @param current its charts, by the tag of the language, by symptom
   */
  SortedMap<String, PrintedCopies> all(SortedMap<String, SortedMap<String, Drawn>> current)
      throws IOException {
    SortedSet<String> touched = touched();
    SortedMap<String, SortedMap<String, Drawn>> there = new TreeMap<>();
    current.forEach((tag, charts) -> there.put(tag, new TreeMap<>(charts)));
    there.values().forEach(charts -> charts.keySet().retainAll(touched));
    return all(touched, there);
  }

  private SortedMap<String, PrintedCopies> all(
      SortedSet<String> touched, SortedMap<String, SortedMap<String, Drawn>> current)
      throws IOException {
    SortedMap<String, SortedMap<String, Drawn>> old = drawn(before, touched);
    SortedMap<String, PrintedCopies> all = new TreeMap<>();
    Languages languages = new Languages(after);
    for (Tongue tongue : languages.all()) {
      KnowledgeBase was = languages.earlier(before, tongue);
      KnowledgeBase is = languages.in(tongue);
      all.put(
          tongue.tag(),
          new PrintedCopies(
              charts(sheets(old, tongue), sheets(current, tongue)),
              touched.stream()
                  .filter(id -> !card(was, id).equals(card(is, id)))
                  .collect(Collectors.toCollection(TreeSet::new)),
              pages(was, is)));
    }
    return all;
  }

  /** Symptoms whose charts and cards are made from something else now. */
  private SortedSet<String> touched() {
    Map<String, Fingerprint> old = new ChartDrawings(before, DRAFT, paper).inputs();
    Map<String, Fingerprint> current = new ChartDrawings(after, DRAFT, paper).inputs();
    return Stream.of(old, current)
        .flatMap(inputs -> inputs.keySet().stream())
        .filter(
            id -> !Optional.ofNullable(old.get(id)).equals(Optional.ofNullable(current.get(id))))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private SortedMap<String, SortedMap<String, Drawn>> drawn(KnowledgeBase kb, Set<String> touched)
      throws IOException {
    List<String> there = touched.stream().filter(kb.symptoms()::containsKey).toList();
    return new ChartDrawings(kb, DRAFT, paper).drawn(there, new Workshop(Ledger.empty()));
  }

  private static SortedMap<String, List<ChartSheet>> sheets(
      SortedMap<String, SortedMap<String, Drawn>> drawn, Tongue tongue) {
    SortedMap<String, List<ChartSheet>> sheets = new TreeMap<>();
    drawn
        .getOrDefault(tongue.tag(), new TreeMap<>())
        .forEach((id, one) -> sheets.put(id, one.sheets()));
    return sheets;
  }

  private static SortedMap<String, ChartPages> charts(
      SortedMap<String, List<ChartSheet>> old, SortedMap<String, List<ChartSheet>> current) {
    SortedMap<String, ChartPages> charts = new TreeMap<>();
    Stream.concat(old.keySet().stream(), current.keySet().stream())
        .forEach(
            id ->
                charts.put(
                    id,
                    differing(
                        old.getOrDefault(id, List.of()), current.getOrDefault(id, List.of()))));
    charts.values().removeIf(ChartPages::none);
    return charts;
  }

  private static ChartPages differing(List<ChartSheet> old, List<ChartSheet> current) {
    Set<String> was = drawings(old);
    Set<String> is = drawings(current);
    return new ChartPages(
        old.stream().filter(sheet -> !is.contains(sheet.svg())).toList(),
        IntStream.range(0, current.size())
            .filter(i -> !was.contains(current.get(i).svg()))
            .mapToObj(i -> new Fresh(current.get(i), i + 1))
            .toList());
  }

  private static Set<String> drawings(List<ChartSheet> sheets) {
    return sheets.stream().map(ChartSheet::svg).collect(Collectors.toCollection(HashSet::new));
  }

  /** The drawing of a pocket card; empty where there is none. */
  private String card(KnowledgeBase kb, String id) {
    if (!Edition.withCards(kb).contains(id)) {
      return "";
    }
    KnowledgeBase excerpt = new Excerpts(kb).forDrawing(kb.symptoms().get(id));
    return ChartSvg.standalone(
        new SingleChart(id, Optional.empty(), Optional.empty()).card(excerpt, DRAFT, paper, false),
        Words.of(kb.handbook().language()));
  }

  /** Pages that read differently, came or went. */
  private static List<Target> pages(KnowledgeBase was, KnowledgeBase is) {
    Map<String, Page> old = written(was);
    Map<String, Page> current = written(is);
    return targets(was, is)
        .filter(
            target -> {
              String path = SitePaths.file(target);
              return !content(old, path).equals(content(current, path));
            })
        .toList();
  }

  private static Optional<Object> content(Map<String, Page> pages, String path) {
    return Optional.ofNullable(pages.get(path)).map(page -> List.of(page.title(), page.content()));
  }

  private static Map<String, Page> written(KnowledgeBase kb) {
    Edition edition =
        new Edition(new TreeMap<>(), List.of(), new TreeMap<>(), DRAFT, false, Optional.empty());
    return new SitePages(kb, edition)
        .all().stream().collect(Collectors.toMap(Page::path, page -> page));
  }

  private static Stream<Target> targets(KnowledgeBase was, KnowledgeBase is) {
    List<Target> targets = new ArrayList<>();
    add(Kind.SYMPTOM, was.symptoms().keySet(), is.symptoms().keySet(), targets);
    add(Kind.FAULT, was.faults().keySet(), is.faults().keySet(), targets);
    add(Kind.READING, was.readings().keySet(), is.readings().keySet(), targets);
    add(Kind.SEQUENCE, was.sequences().keySet(), is.sequences().keySet(), targets);
    add(Kind.GUIDE, was.guides().keySet(), is.guides().keySet(), targets);
    targets.add(Target.SAFETY);
    targets.add(Target.EQUIPMENT);
    return targets.stream();
  }

  private static void add(Kind kind, Set<String> was, Set<String> is, List<Target> targets) {
    SortedSet<String> ids = new TreeSet<>(was);
    ids.addAll(is);
    ids.forEach(id -> targets.add(new Target(kind, id)));
  }
}
