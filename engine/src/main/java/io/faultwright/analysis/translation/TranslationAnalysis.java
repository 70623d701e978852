package io.faultwright.analysis.translation;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Catalogue;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.source.Place;
import io.faultwright.translation.ShownText;
import io.faultwright.translation.Texts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Finds texts without a translation, and translations of texts that nothing says any more. */
public final class TranslationAnalysis {
  /** So many are shown one by one for each language; of the others the number is told. */
  static final int SHOWN = 10;

  private final String language;
  private final Catalogue catalogue;
  private final Map<String, ShownText> untranslated = new LinkedHashMap<>();
  private final SortedMap<String, Catalogue.Entry> unused;

  private TranslationAnalysis(Catalogue catalogue, List<ShownText> texts) {
    this.language = catalogue.language();
    this.catalogue = catalogue;
    this.unused = new TreeMap<>(catalogue.entries());
    texts.forEach(this::look);
  }

  /** One finding per text and language, and one for those that are too many. */
  public static List<Finding> findings(KnowledgeBase knowledge) {
    List<String> languages = knowledge.handbook().translatedTo();
    List<ShownText> texts = languages.isEmpty() ? List.of() : Texts.of(knowledge);
    return languages.stream()
        .flatMap(language -> knowledge.wordbook().catalogue(language).stream())
        .flatMap(catalogue -> new TranslationAnalysis(catalogue, texts).findings())
        .toList();
  }

  private void look(ShownText text) {
    boolean known = text.keys().stream().anyMatch(catalogue.entries()::containsKey);
    text.keys().forEach(unused::remove);
    if (!known && text.words()) {
      untranslated.putIfAbsent(text.keys().get(0), text);
    }
  }

  private Stream<Finding> findings() {
    Alike alike = new Alike(unused.keySet());
    List<Finding> findings = new ArrayList<>();
    untranslated.values().stream()
        .limit(SHOWN)
        .forEach(text -> findings.add(untranslated(text, alike.take(text.keys().get(0)))));
    further(untranslated.values().stream().map(ShownText::place).toList())
        .map(
            place ->
                Finding.of(
                    FindingKind.UNTRANSLATED,
                    place,
                    further(untranslated.size(), "text", "without a translation into"),
                    "the first "
                        + SHOWN
                        + " are shown one by one, the next when those are translated"))
        .ifPresent(findings::add);
    List<String> left = unused.keySet().stream().filter(alike::isLeft).toList();
    left.stream().limit(SHOWN).map(this::unused).forEach(findings::add);
    further(left.stream().map(text -> unused.get(text).place()).toList())
        .map(
            place ->
                Finding.of(
                    FindingKind.UNUSED_TRANSLATION,
                    place,
                    further(left.size(), "translation", "that nothing needs, into"),
                    "the first " + SHOWN + " are shown one by one, the next when those are mended"))
        .ifPresent(findings::add);
    return findings.stream();
  }

  private Finding untranslated(ShownText text, Optional<String> like) {
    String message = Quotes.of(text.text()) + " is not translated into `" + language + "`";
    return like.map(
            old ->
                Finding.of(
                    FindingKind.UNTRANSLATED,
                    List.of(text.place(), unused.get(old).place()),
                    message,
                    "a text like it has a translation: write the new text in its place, and see"
                        + " whether the translation still holds"))
        .orElseGet(
            () ->
                Finding.of(
                    FindingKind.UNTRANSLATED,
                    text.place(),
                    message,
                    "write it below `translations: { " + language + ": … }`, in any file"));
  }

  private Finding unused(String text) {
    return Finding.of(
        FindingKind.UNUSED_TRANSLATION,
        unused.get(text).place(),
        "nothing in the handbook says " + Quotes.of(text),
        "take the translation into `" + language + "` out, or write the text as it stands there");
  }

  private static Optional<Place> further(List<Place> places) {
    return places.stream().skip(SHOWN).findFirst();
  }

  private String further(int all, String what, String how) {
    int more = all - SHOWN;
    return more + " more " + what + (more == 1 ? " " : "s ") + how + " `" + language + "`";
  }
}
