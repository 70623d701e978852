package io.faultwright.page;

import io.faultwright.page.IndexSection.Entry;
import io.faultwright.page.IndexSection.Letter;
import io.faultwright.page.Target.Kind;
import java.text.CollationKey;
import java.text.Collator;
import java.text.Normalizer;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Everything by name. */
final class IndexSections {
  private static final String NO_LETTER = "0–9";

  private final Desk desk;
  private final Comparator<String> alphabet;

  IndexSections(Desk desk) {
    this.desk = desk;
    Collator collator = Collator.getInstance(Locale.ROOT);
    Map<String, CollationKey> keys = new HashMap<>();
    this.alphabet =
        Comparator.<String>comparingInt(text -> text.equals(NO_LETTER) ? 0 : 1)
            .thenComparing(text -> keys.computeIfAbsent(text, collator::getCollationKey))
            .thenComparing(Comparator.naturalOrder());
  }

  IndexSection section() {
    Map<String, List<Entry>> byLetter =
        entries()
            .sorted(
                Comparator.comparing((Entry entry) -> entry.link().text(), alphabet)
                    .thenComparing(Entry::kind)
                    .thenComparing(entry -> entry.link().href()))
            .collect(
                Collectors.groupingBy(
                    entry -> letter(entry.link().text()),
                    () -> new TreeMap<>(alphabet),
                    Collectors.toList()));
    return new IndexSection(
        byLetter.entrySet().stream()
            .map(group -> new Letter(group.getKey(), group.getValue()))
            .toList());
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
