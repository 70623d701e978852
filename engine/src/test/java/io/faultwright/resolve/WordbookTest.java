package io.faultwright.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class WordbookTest {
  private static Sources sources(String... files) {
    Stream<SourceFile> written =
        Stream.iterate(0, number -> number < files.length, number -> number + 1)
            .map(number -> new SourceFile("words-" + number + ".yaml", files[number]));
    return new Sources(Stream.concat(Knowledge.sources().files().stream(), written).toList());
  }

  private static KnowledgeBase read(String... files) {
    return Resolver.resolve(sources(files));
  }

  private static List<String> problems(String... files) {
    Unreadable unreadable = assertThrows(Unreadable.class, () -> Resolver.resolve(sources(files)));
    return unreadable.problems().stream().map(Problem::message).toList();
  }

  @Test
  void translationsOfAllFilesAreOneCatalogue() {
    KnowledgeBase base =
        read("translations: { de: { One: Eins } }", "translations: { DE: { Two: Zwei }, fr: {} }");
    assertEquals(Set.of("de", "fr"), base.wordbook().catalogues().keySet());
    assertEquals(
        Optional.of("Zwei"), base.wordbook().catalogue("de").orElseThrow().translation("Two"));
    assertEquals(
        Optional.of("Eins"), base.wordbook().catalogue("de").orElseThrow().translation("One"));
  }

  @Test
  void aLineBreakInATextIsWorthABlank() {
    KnowledgeBase base =
        read("translations:\n  de:\n    ? |\n      One\n      two\n    : Eins, zwei");
    assertEquals(
        Optional.of("Eins, zwei"),
        base.wordbook().catalogue("de").orElseThrow().translation("One  two\n"));
  }

  @Test
  void aTranslationIsAText() {
    assertEquals(
        List.of(
            "the translation of `One` into `de` is empty",
            "the translation of `Two` into `de` must be a text, found a list"),
        problems("translations:\n  de:\n    One:\n    Two: [Zwei]"));
  }

  @Test
  void aLanguageIsATagWithTexts() {
    assertEquals(
        List.of(
            "`Deutsch!` is not a language tag",
            "`charts` is not a language tag",
            "`fr` must be a map of ids or sections, found a text"),
        problems("translations:\n  Deutsch!: {}\n  charts: {}\n  fr: Un"));
  }

  @Test
  void synonymsNameSymptomsFaultsReadingsAndParts() {
    KnowledgeBase base = read("synonyms: { iced up: [ice-left-after-defrost] }");
    assertEquals(Set.of("ice-left-after-defrost"), base.wordbook().synonyms().get("iced up").ids());
  }

  @Test
  void synonymsStandForSomething() {
    assertEquals(
        List.of(
            "unknown symptom, fault, reading or part `ice-lift-after-defrost`",
            "synonym `b` stands for nothing",
            "synonym `c` stands for ids, found a list"),
        problems(
            """
            synonyms:
              a: ice-lift-after-defrost
              b: []
              c: [[ice-left-after-defrost]]
            """));
  }

  @Test
  void synonymsOfTwoFilesMustDiffer() {
    assertEquals(
        List.of("synonym `a` is defined twice"),
        problems(
            "synonyms: { a: ice-left-after-defrost }", "synonyms: { a: ice-left-after-defrost }"));
  }
}
