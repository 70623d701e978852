package io.faultwright.page;

import io.faultwright.change.Comparison;
import io.faultwright.change.Edit;
import io.faultwright.model.Sequence;
import io.faultwright.model.Symptom;
import io.faultwright.page.BulletinSection.Copies;
import io.faultwright.page.BulletinSection.Machines;
import io.faultwright.page.BulletinSection.PageGroup;
import io.faultwright.page.PrintedCopies.ChartPages;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the field is told of a new revision, from the exact comparison with the one before. */
final class BulletinSections {
  private final Desk desk;
  private final Bulletin bulletin;
  private final Comparison comparison;
  private final Wording before;
  private final boolean cards;

  /**
   * @param cards whether pocket cards are published beside the page
   */
  BulletinSections(Desk desk, Bulletin bulletin, boolean cards) {
    this.desk = desk;
    this.bulletin = bulletin;
    this.cards = cards;
    this.comparison = bulletin.since().comparison();
    this.before = Wording.published(bulletin.since().before());
  }

  BulletinSection section() {
    Concerned concerned = new Concerned(desk, bulletin.since());
    return new BulletinSection(
        bulletin.reasons(),
        bulletin.language(),
        machines(concerned),
        new ChangesSections(desk, bulletin.since()).section(),
        new Cautions(desk).of(concerned.cautions()).stream().filter(CautionPanel::alert).toList(),
        copies(),
        texts(desk, comparison));
  }

  private List<Machines> machines(Concerned concerned) {
    return new MachineLines(desk.kb().equipment()).of(concerned.builds());
  }

  /** What only says the same in other words; that the revision counts up is none of it. */
  static List<BulletinSection.WorkItem> texts(Desk desk, Comparison comparison) {
    Map<String, List<Edit>> things = new LinkedHashMap<>();
    for (Edit edit : comparison.edits(Edit.Concern.TEXT)) {
      if (!edit.kind().equals("handbook") || !Set.of("revision", "date").contains(edit.field())) {
        things
            .computeIfAbsent((edit.kind() + " " + edit.id()).strip(), thing -> new ArrayList<>())
            .add(edit);
      }
    }
    return things.entrySet().stream()
        .map(thing -> new BulletinSection.WorkItem(thing.getKey(), fields(thing.getValue())))
        .toList();
  }

  private static String fields(List<Edit> edits) {
    return edits.get(0).whole()
        ? edits.get(0).manner()
        : edits.stream().map(Edit::field).collect(Collectors.joining(", "));
  }

  private PrintedCopies printed() {
    return bulletin.printed().get(desk.kb().handbook().language());
  }

  private Copies copies() {
    Map<String, String> stale = new LinkedHashMap<>();
    Map<String, String> fresh = new LinkedHashMap<>();
    symptoms()
        .forEach(
            id -> {
              ChartPages pages =
                  printed().charts().getOrDefault(id, new ChartPages(List.of(), List.of()));
              pages.stale().forEach(sheet -> stale.put(title(before, id, sheet), ""));
              pages
                  .fresh()
                  .forEach(
                      one ->
                          fresh.put(
                              title(desk.words(), id, one.sheet()),
                              desk.links().file(SitePaths.chart(id, one.number()))));
              card(id, stale, fresh);
            });
    return new Copies(
        links(fresh, stale.keySet(), true),
        stale.keySet().stream().filter(title -> !fresh.containsKey(title)).toList(),
        links(fresh, stale.keySet(), false),
        pages());
  }

  private void card(String id, Map<String, String> stale, Map<String, String> fresh) {
    if (printed().cards().contains(id)) {
      if (bulletin.since().before().symptoms().containsKey(id)) {
        stale.put(desk.say("{0}, pocket card", before.symptom(id)), "");
      }
      if (desk.kb().symptoms().containsKey(id)) {
        fresh.put(
            desk.say("{0}, pocket card", desk.words().symptom(id)),
            cards ? desk.links().file(SitePaths.card(id)) : "");
      }
    }
  }

  /** Those of the new revision by title, then those that are gone. */
  private List<String> symptoms() {
    return Stream.concat(
            Alphabet.sorted(desk.kb().symptoms().values(), Symptom::title).stream(),
            bulletin.since().before().symptoms().values().stream())
        .map(Symptom::id)
        .distinct()
        .toList();
  }

  private String title(Wording words, String symptom, ChartSheet sheet) {
    return ChartFigures.title(words.symptom(symptom), sheet, desk.words().say());
  }

  private static List<Link> links(Map<String, String> fresh, Set<String> stale, boolean replacing) {
    return fresh.entrySet().stream()
        .filter(one -> stale.contains(one.getKey()) == replacing)
        .map(one -> new Link(one.getKey(), one.getValue()))
        .toList();
  }

  private List<PageGroup> pages() {
    Map<String, List<String>> groups = new LinkedHashMap<>();
    for (Target target : printed().pages()) {
      groups.computeIfAbsent(kind(target), kind -> new ArrayList<>()).add(title(target));
    }
    return groups.entrySet().stream()
        .map(group -> new PageGroup(group.getKey(), group.getValue()))
        .toList();
  }

  private String kind(Target target) {
    return switch (target.kind()) {
      case SYMPTOM -> desk.say("Complaints");
      case FAULT -> desk.say("Faults and repairs");
      case READING -> desk.say("Readings");
      case SEQUENCE -> desk.say("Sequences of operation");
      case GUIDE -> desk.say("Guides");
      case SAFETY -> desk.say("Safety");
      default -> desk.say("Equipment");
    };
  }

  private String title(Target target) {
    return switch (target.kind()) {
      case SYMPTOM ->
          desk.kb().symptoms().containsKey(target.id())
              ? desk.words().symptom(target.id())
              : before.symptom(target.id());
      case FAULT ->
          desk.kb().faults().containsKey(target.id())
              ? desk.words().fault(target.id())
              : before.fault(target.id());
      case READING ->
          desk.kb().readings().containsKey(target.id())
              ? desk.words().subject(target.id())
              : before.subject(target.id());
      case SEQUENCE ->
          Stream.of(desk.kb(), bulletin.since().before())
              .flatMap(kb -> Stream.ofNullable(kb.sequences().get(target.id())))
              .map(Sequence::title)
              .findFirst()
              .orElse("");
      case GUIDE ->
          Stream.of(desk.kb(), bulletin.since().before())
              .filter(kb -> kb.guides().containsKey(target.id()))
              .map(kb -> kb.guides().get(target.id()).title())
              .findFirst()
              .orElse("");
      default -> "";
    };
  }
}
