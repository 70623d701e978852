package io.faultwright.page;

import io.faultwright.page.IndexSection.Entry;
import io.faultwright.page.IndexSection.Letter;
import io.faultwright.page.Target.Kind;
import java.text.Normalizer;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Everything by name. */
final class IndexSections {
  private static final String NO_LETTER = "0–9";

  private final Desk desk;

  IndexSections(Desk desk) {
    this.desk = desk;
  }

  IndexSection section() {
    Map<String, List<Entry>> byLetter =
        sorted().stream().collect(Collectors.groupingBy(entry -> letter(entry.link().text())));
    return new IndexSection(
        Alphabet.sorted(byLetter.keySet(), letter -> letter).stream()
            .sorted(Comparator.comparing(letter -> !letter.equals(NO_LETTER)))
            .map(letter -> new Letter(letter, byLetter.get(letter)))
            .toList());
  }

  private List<Entry> sorted() {
    return Alphabet.sorted(
        entries()
            .sorted(Comparator.comparing(Entry::kind).thenComparing(entry -> entry.link().href()))
            .toList(),
        entry -> entry.link().text());
  }

  private Stream<Entry> entries() {
    Links links = desk.links();
    return Stream.of(
            desk.kb().symptoms().keySet().stream()
                .map(id -> new Entry(links.symptom(id), desk.say("complaint"))),
            desk.kb().faults().keySet().stream()
                .map(id -> new Entry(links.fault(id), desk.say("fault"))),
            desk.kb().readings().keySet().stream()
                .map(id -> new Entry(links.reading(id), desk.say("reading"))),
            desk.kb().guides().keySet().stream()
                .map(id -> new Entry(links.guide(id), desk.say("guide"))),
            SequenceSections.links(desk).stream()
                .map(link -> new Entry(link, desk.say("sequence of operation"))),
            links.refrigerants(desk.uses().refrigerants()).stream()
                .map(link -> new Entry(link, desk.say("refrigerant"))),
            desk.kb().equipment().models().keySet().stream().map(this::model))
        .flatMap(entries -> entries);
  }

  private Entry model(String number) {
    return new Entry(new Link(number, desk.links().href(Kind.MODEL, number)), desk.say("model"));
  }

  private static String letter(String title) {
    String plain = Normalizer.normalize(title, Normalizer.Form.NFD);
    return plain
        .codePoints()
        .filter(Character::isLetterOrDigit)
        .limit(1)
        .mapToObj(point -> Character.isLetter(point) ? upper(point) : NO_LETTER)
        .findFirst()
        .orElse(NO_LETTER);
  }

  private static String upper(int point) {
    return new String(Character.toChars(point)).toUpperCase(Locale.ROOT);
  }
}
