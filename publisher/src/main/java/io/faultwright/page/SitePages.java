package io.faultwright.page;

import io.faultwright.diagnostic.Problem;
import io.faultwright.model.Fault;
import io.faultwright.model.Guide;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Sequence;
import io.faultwright.model.SequencesAbout;
import io.faultwright.model.Symptom;
import io.faultwright.page.Target.Kind;
import io.faultwright.quantity.Refrigerant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every page of the site. */
public final class SitePages {
  private final KnowledgeBase kb;
  private final Edition edition;
  private final Desk desk;
  private final Tongue tongue;
  private final List<Tongue> all;

  /** The pages in the only language there is. */
  public SitePages(KnowledgeBase kb, Edition edition) {
    this(kb, edition, Tongue.own(kb.handbook().language()), List.of());
  }

  /**
   * The pages in one of several languages.
   *
   * @param kb in that language
   * @param all the languages
   */
  public SitePages(KnowledgeBase kb, Edition edition, Tongue tongue, List<Tongue> all) {
    this.tongue = tongue;
    this.all = List.copyOf(all);
    this.kb = kb;
    this.edition = edition;
    this.desk = Desk.of(kb, new SiteAddresses(tongue.folder(), "", Set.of()));
  }

  /**
   * A page to be written.
   *
   * @param path its file
   * @param symptom whose page it is, if it is one's
   * @param listed what it lists, where it stands on that and on what belongs to no symptom; absent
   *     for all others
   * @param page writes it; may run on any thread
   */
  public record Plan(
      String path, Optional<String> symptom, Optional<Listed> listed, Supplier<Page> page) {
    Plan listing(SortedSet<String> symptoms, List<Sequence> sequences) {
      return new Plan(path, symptom, Optional.of(new Listed(symptoms, sequences)), page);
    }
  }

  /** The pages, in a fixed order. */
  public List<Page> all() {
    return plans().stream().map(plan -> plan.page().get()).toList();
  }

  /** The pages to be written, in a fixed order. */
  public List<Plan> plans() {
    return Stream.of(
            Stream.of(start(), equipment(), safety(), index(), search(), diagnosis()),
            kb.parts().isEmpty() ? Stream.<Plan>empty() : Stream.of(parts()),
            kb.handbook().base().stream().map(this::stickers),
            edition.draft() ? Stream.of(findings()) : Stream.<Plan>empty(),
            edition.since().stream().map(this::changes),
            edition.bulletin().stream().map(this::bulletin),
            edition.releases().isEmpty() ? Stream.<Plan>empty() : Stream.of(releases()),
            kb.symptoms().values().stream().map(this::symptom),
            listing(new SequencesAbout(kb.sequences())),
            kb.sequences().values().stream().map(this::sequence),
            desk.uses().refrigerants().stream().map(this::refrigerant),
            kb.guides().values().stream().map(this::guide))
        .flatMap(pages -> pages)
        .toList();
  }

  /** Faults and readings, with what they list. */
  private Stream<Plan> listing(SequencesAbout sequences) {
    Uses uses = desk.uses();
    return Stream.concat(
        kb.faults().values().stream()
            .map(
                one ->
                    fault(one)
                        .listing(uses.symptomsWithFault(one.id()), sequences.of(one.id(), one))),
        kb.readings().values().stream()
            .map(
                one ->
                    reading(one)
                        .listing(uses.symptomsWithReading(one.id()), sequences.of(one.id(), one))));
  }

  private Plan fault(Fault one) {
    return page(Kind.FAULT, one.id(), one.title(), at -> new FaultSections(at).of(one));
  }

  private Plan reading(Reading one) {
    return page(Kind.READING, one.id(), one.title(), at -> new ReadingSections(at).of(one));
  }

  private Plan sequence(Sequence one) {
    return page(
        Kind.SEQUENCE, one.id(), one.title(), at -> new SequenceSections(at, false).of(one));
  }

  private Plan refrigerant(Refrigerant one) {
    String title = RefrigerantSections.title(one, desk.words().say());
    return page(Kind.REFRIGERANT, one.id(), title, at -> new RefrigerantSections(at).of(one));
  }

  private Plan guide(Guide one) {
    Set<String> pictures = edition.pictures().keySet();
    return page(
        Kind.GUIDE, one.id(), one.title(), at -> new GuideSections(at, pictures).of(one, 2));
  }

  /** Head and foot of every page. */
  public Frame frame() {
    return Frames.of(kb.handbook(), edition.draft());
  }

  /** Pages of refrigerants, seen from the site's root. */
  public List<Link> refrigerants() {
    return desk.links().refrigerants(desk.uses().refrigerants());
  }

  /** Links in guides that lead nowhere. */
  public List<Problem> problems() {
    GuideSections guides = new GuideSections(desk, edition.pictures().keySet());
    return kb.guides().values().stream().flatMap(guides::problems).sorted().toList();
  }

  private Plan start() {
    return page(
        Target.START,
        kb.handbook().title(),
        Set.of(),
        at -> new StartSections(at, edition).section());
  }

  private Plan equipment() {
    Set<Target> here =
        Stream.of(
                targets(Kind.FAMILY, kb.equipment().families().keySet()),
                targets(Kind.OPTION, kb.equipment().options().keySet()),
                targets(Kind.MODEL, kb.equipment().models().keySet()))
            .flatMap(targets -> targets)
            .collect(Collectors.toSet());
    return page(
        Target.EQUIPMENT, desk.say("Equipment"), here, at -> new EquipmentSections(at).section());
  }

  private Plan safety() {
    Set<Target> here = targets(Kind.CAUTION, kb.cautions().keySet()).collect(Collectors.toSet());
    return page(Target.SAFETY, desk.say("Safety"), here, at -> new SafetySections(at).section());
  }

  private Plan index() {
    return page(Target.INDEX, desk.say("A to Z"), Set.of(), at -> new IndexSections(at).section());
  }

  private Plan search() {
    return page(
        Target.SEARCH, desk.say("Search"), Set.of(), at -> new SearchSections(at).section());
  }

  private Plan diagnosis() {
    return page(
        Target.DIAGNOSIS,
        desk.say("Guided diagnosis"),
        Set.of(),
        at ->
            new DiagnosisSection(
                new Link(desk.say("List of complaints"), at.links().page(Target.START))));
  }

  private Plan parts() {
    Set<Target> here = targets(Kind.PART, kb.parts().keySet()).collect(Collectors.toSet());
    return page(Target.PARTS, desk.say("Parts"), here, at -> new PartsSections(at).section());
  }

  private Plan stickers(String base) {
    return page(
        Target.STICKERS,
        desk.say("Labels for the nameplate"),
        Set.of(),
        at -> new StickersSections(at, base).section());
  }

  private Plan findings() {
    return page(
        Target.FINDINGS,
        desk.say("Findings"),
        Set.of(),
        at -> new FindingsSections(at).of(edition.findings()));
  }

  private Plan changes(Since since) {
    return page(
        Target.CHANGES,
        desk.say("What changed"),
        Set.of(),
        at -> new ChangesSections(at, since).section());
  }

  private Plan bulletin(Bulletin bulletin) {
    return page(
        Target.BULLETIN,
        desk.say("Bulletin"),
        Set.of(),
        at -> new BulletinSections(at, bulletin, edition.pdf()).section());
  }

  private Plan releases() {
    SiteAddresses here =
        new SiteAddresses(tongue.folder(), SitePaths.file(Target.RELEASES), Set.of());
    return page(
        Target.RELEASES,
        desk.say("Releases"),
        Set.of(),
        at ->
            ReleasesSections.of(
                edition.releases(),
                desk.words().say(),
                here::shared,
                edition.bulletin().map(told -> bulletinLink(at))));
  }

  /** A link to the bulletin of this release. */
  static Link bulletinLink(Desk at) {
    return new Link(
        at.say("Bulletin: what this release changes"), at.links().page(Target.BULLETIN));
  }

  /** The page of a symptom; it is written from what belongs to the symptom. */
  public Plan symptom(Symptom symptom) {
    Set<Target> here =
        Stream.concat(
                targets(Kind.READING, desk.uses().readingsOf(symptom.id())),
                targets(Kind.FAULT, desk.uses().faultsOf(symptom.id())))
            .collect(Collectors.toSet());
    ChartFigures charts = new ChartFigures(edition.charts(), desk.words().say());
    return page(
        new Target(Kind.SYMPTOM, symptom.id()),
        symptom.title(),
        here,
        at ->
            new SymptomSections(at, edition.pdf()).of(symptom, charts.onSite(symptom, at.links())));
  }

  private static Stream<Target> targets(Kind kind, Collection<String> ids) {
    return ids.stream().map(id -> new Target(kind, id));
  }

  private Plan page(Kind kind, String id, String title, Function<Desk, Content> content) {
    return page(new Target(kind, id), title, Set.of(), content);
  }

  private Plan page(
      Target target, String title, Set<Target> here, Function<Desk, Content> content) {
    String path = SitePaths.file(target);
    Optional<String> symptom =
        Optional.of(target).filter(one -> one.kind() == Kind.SYMPTOM).map(Target::id);
    return new Plan(path, symptom, Optional.empty(), () -> page(path, title, here, content));
  }

  private Page page(String path, String title, Set<Target> here, Function<Desk, Content> content) {
    SiteAddresses addresses = new SiteAddresses(tongue.folder(), path, here);
    Content shown = content.apply(desk.at(addresses));
    return new Page(
        path,
        title,
        frame(),
        addresses.shared(SitePaths.STYLE),
        Stream.concat(
                Stream.of(
                    addresses.file(SitePaths.OFFLINE_WORDS),
                    addresses.shared(SitePaths.OFFLINE_SCRIPT)),
                shown.scripts().stream().map(addresses::file))
            .toList(),
        new Link(desk.say("Start"), addresses.href(Target.START)),
        new Link(desk.say("Safety"), addresses.href(Target.SAFETY)),
        new Navigation(desk, addresses).ways(edition.draft()),
        Tongue.switches(tongue, all, path),
        shown);
  }
}
