package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.Characters;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import io.faultwright.syntax.Tree;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** What is defined where: the sections of every file, merged by id. */
final class Outline {
  private static final String HANDBOOK = "handbook";
  private static final String EQUIPMENT = "equipment";
  private static final String NAMEPLATE = "nameplate";
  private static final String TRANSLATIONS = "translations";
  private static final Map<String, Kind> SECTIONS = new TreeMap<>();
  private static final Map<String, Kind> EQUIPMENT_SECTIONS = new TreeMap<>();

  static {
    SECTIONS.put("cautions", Kind.CAUTION);
    SECTIONS.put("parts", Kind.PART);
    SECTIONS.put("set-ups", Kind.SET_UP);
    SECTIONS.put("readings", Kind.READING);
    SECTIONS.put("limits", Kind.LIMITS);
    SECTIONS.put("faults", Kind.FAULT);
    SECTIONS.put("symptoms", Kind.SYMPTOM);
    SECTIONS.put("never", Kind.NEVER);
    SECTIONS.put("cases", Kind.CASE);
    SECTIONS.put("charts", Kind.CHART);
    SECTIONS.put("synonyms", Kind.SYNONYM);
    SECTIONS.put("sequences", Kind.SEQUENCE);
    SECTIONS.put("sessions", Kind.SESSION);
    EQUIPMENT_SECTIONS.put("families", Kind.FAMILY);
    EQUIPMENT_SECTIONS.put("options", Kind.OPTION);
    EQUIPMENT_SECTIONS.put("models", Kind.MODEL);
    EQUIPMENT_SECTIONS.put("refrigerants", Kind.REFRIGERANT);
  }

  private final Problems problems;
  private final Map<Kind, SortedMap<String, Definition>> definitions = new EnumMap<>(Kind.class);
  private final SortedMap<String, Definition> singles = new TreeMap<>();
  private final SortedMap<String, SortedMap<String, Definition>> translations = new TreeMap<>();
  private final Set<Kind> incomplete = EnumSet.noneOf(Kind.class);

  private Outline(Problems problems) {
    this.problems = problems;
    for (Kind kind : Kind.values()) {
      definitions.put(kind, new TreeMap<>());
    }
  }

  /** The outline of all files; what is wrong with them goes to the problems. */
  static Outline of(Sources sources, Problems problems) {
    Outline outline = new Outline(problems);
    sources.files().parallelStream()
        .filter(file -> !SignOffReader.isSignOff(file.path()))
        .map(ParsedFile::of)
        .toList()
        .forEach(outline::read);
    outline.checkReadingsAgainstOptions();
    return outline;
  }

  /** Definitions of a kind, by id. */
  SortedMap<String, Definition> of(Kind kind) {
    return Collections.unmodifiableSortedMap(definitions.get(kind));
  }

  /** Whether everything that could define an id of this kind was read. */
  boolean complete(Kind kind) {
    return !incomplete.contains(kind);
  }

  Optional<Definition> handbook() {
    return Optional.ofNullable(singles.get(HANDBOOK));
  }

  Optional<Definition> equipment() {
    return Optional.ofNullable(singles.get(EQUIPMENT));
  }

  Optional<Definition> nameplate() {
    return Optional.ofNullable(singles.get(NAMEPLATE));
  }

  /** Translated texts by language, and by the text that is translated. */
  SortedMap<String, SortedMap<String, Definition>> translations() {
    return Collections.unmodifiableSortedMap(translations);
  }

  private void read(ParsedFile parsed) {
    problems.addAll(parsed.problems());
    parsed.tree().ifPresentOrElse(this::readTree, () -> readGuide(parsed.file()));
  }

  private void readGuide(SourceFile file) {
    Characters.check(file, problems);
    String name = file.path().substring(file.path().lastIndexOf('/') + 1);
    Place place = new Place(file.path(), 1, 1, 1);
    Scalar key = new Scalar(name.substring(0, name.length() - ".md".length()), false, place);
    define(Kind.GUIDE, new Entry(key, new Scalar(file.text(), true, place)));
  }

  private void readTree(Tree tree) {
    if (!tree.whole()) {
      incomplete.addAll(EnumSet.allOf(Kind.class));
    }
    tree.root()
        .ifPresent(
            root ->
                entries(root, "a file of the knowledge base", EnumSet.allOf(Kind.class))
                    .forEach(this::readSection));
  }

  private void readSection(Entry section) {
    Kind kind = SECTIONS.get(section.name());
    if (kind != null) {
      readDefinitions(kind, section);
    } else if (section.name().equals(EQUIPMENT)) {
      readEquipment(section);
    } else if (section.name().equals(HANDBOOK)) {
      defineSingle(section);
    } else if (section.name().equals(TRANSLATIONS)) {
      readTranslations(section);
    } else {
      unknownSection(
          section, EnumSet.allOf(Kind.class), SECTIONS, List.of(HANDBOOK, EQUIPMENT, TRANSLATIONS));
    }
  }

  private void readEquipment(Entry section) {
    singles.putIfAbsent(EQUIPMENT, new Definition("`equipment`", section.key(), section.value()));
    Set<Kind> kinds = EnumSet.of(Kind.FAMILY, Kind.OPTION, Kind.MODEL, Kind.REFRIGERANT);
    for (Entry part : entries(section.value(), "`equipment`", kinds)) {
      Kind kind = EQUIPMENT_SECTIONS.get(part.name());
      if (kind != null) {
        readDefinitions(kind, part);
      } else if (part.name().equals(NAMEPLATE)) {
        defineSingle(part);
      } else {
        unknownSection(part, kinds, EQUIPMENT_SECTIONS, List.of(NAMEPLATE));
      }
    }
  }

  private void readTranslations(Entry section) {
    Set<Kind> kinds = EnumSet.of(Kind.TRANSLATION);
    for (Entry language : entries(section.value(), "`" + TRANSLATIONS + "`", kinds)) {
      Optional<String> tag = LanguageTags.read(language.key(), problems);
      if (tag.isEmpty()) {
        incomplete.add(Kind.TRANSLATION);
      }
      tag.ifPresent(known -> readTranslations(known, language));
    }
  }

  private void readTranslations(String tag, Entry language) {
    SortedMap<String, Definition> known = translations.computeIfAbsent(tag, one -> new TreeMap<>());
    String what = "`" + language.name() + "`";
    for (Entry text : entries(language.value(), what, EnumSet.of(Kind.TRANSLATION))) {
      add(known, Definition.ofTranslation(tag, text), "keep one of the two");
    }
  }

  private void unknownSection(
      Entry section, Set<Kind> concerned, Map<String, Kind> known, List<String> further) {
    incomplete.addAll(concerned);
    Set<String> names = new TreeSet<>(known.keySet());
    names.addAll(further);
    problems.add(
        section.key().place(),
        "unknown section " + Words.quoted(section.name()),
        NearMatch.help(section.name(), names));
  }

  private void readDefinitions(Kind kind, Entry section) {
    entries(section.value(), "`" + section.name() + "`", EnumSet.of(kind))
        .forEach(entry -> define(kind, entry));
  }

  private List<Entry> entries(Node node, String what, Set<Kind> concerned) {
    if (node instanceof MapNode map) {
      return map.entries();
    }
    incomplete.addAll(concerned);
    problems.add(
        node.place(),
        what + " must be a map of ids or sections, found " + node.kind(),
        "write `id:` or `section:` and indent what belongs to it");
    return List.of();
  }

  private void define(Kind kind, Entry entry) {
    if (kind == Kind.SYNONYM) {
      add(definitions.get(kind), Definition.of(kind, entry), "put all ids into one list");
      return;
    }
    if (kind != Kind.LIMITS) {
      Ids.check(kind, entry.key(), problems);
    }
    add(definitions.get(kind), Definition.of(kind, entry));
  }

  private void defineSingle(Entry entry) {
    add(singles, new Definition("`" + entry.name() + "`", entry.key(), entry.value()));
  }

  private void add(SortedMap<String, Definition> known, Definition definition) {
    add(known, definition, "keep one of the two, or give one another id");
  }

  private void add(SortedMap<String, Definition> known, Definition definition, String help) {
    Definition earlier = known.putIfAbsent(definition.id(), definition);
    if (earlier != null) {
      problems.add(
          new Problem(
              List.of(definition.place(), earlier.place()),
              definition.what() + " is defined twice",
              help));
    }
  }

  private void checkReadingsAgainstOptions() {
    of(Kind.READING)
        .forEach(
            (id, reading) ->
                Optional.ofNullable(of(Kind.OPTION).get(id))
                    .ifPresent(option -> usedTwice(reading, option)));
  }

  private void usedTwice(Definition reading, Definition option) {
    problems.add(
        new Problem(
            List.of(reading.place(), option.place()),
            "`" + reading.id() + "` is a reading and an option at once",
            "a condition could mean either; rename one of the two"));
  }
}
