package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.words.Words;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every word that the tool prints in a handbook is in every language that it knows, once. */
class WordsTest {
  /** Where words for handbooks are called for. */
  private static final List<Path> ROOTS =
      List.of(
          Path.of("../engine/src/main/java"),
          Path.of("src/main/java"),
          Path.of("src/main/resources"));

  private static final Pattern JOINED = Pattern.compile("\"\\s*\\+\\s*\"");
  private static final Pattern CALL = Pattern.compile("say\\(\\s*\"([^\"]+)\"");
  private static final Pattern SLOT = Pattern.compile("\\{\\w}");

  private static final Set<String> CALLED = called();

  private static Set<String> called() {
    Set<String> called = new TreeSet<>();
    for (Path root : ROOTS) {
      files(root).forEach(file -> called.addAll(calls(text(file))));
    }
    return called;
  }

  /** The command line speaks English to trainers. */
  private static Stream<Path> files(Path root) {
    try (Stream<Path> files = Files.walk(root)) {
      return files
          .filter(file -> file.toString().matches(".*\\.(java|ftlh|js)"))
          .filter(file -> !file.getParent().endsWith("cli"))
          .sorted()
          .toList()
          .stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Set<String> calls(String text) {
    return CALL.matcher(JOINED.matcher(text).replaceAll(""))
        .results()
        .map(call -> call.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "es"})
  void everyWordIsThereOnce(String language) {
    assertEquals(CALLED, Words.of(language).all().keySet());
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "es"})
  void translationsHaveTheSamePlaces(String language) {
    Words.of(language)
        .all()
        .forEach((english, other) -> assertEquals(slots(english), slots(other), english));
  }

  private static Set<String> slots(String text) {
    return SLOT.matcher(text).results().map(slot -> slot.group()).collect(Collectors.toSet());
  }

  @Test
  void allLanguagesAreTested() {
    assertEquals(List.of("de", "es"), Words.LANGUAGES);
  }

  @Test
  void aRegionHasTheWordsOfItsLanguage() {
    assertEquals("Sicherheit", Words.of("de-AT").say("Safety"));
  }

  @Test
  void anUnknownLanguageSpeaksEnglish() {
    assertEquals("Page 1 of 2", Words.of("ar").say("Page {0} of {1}", 1, 2));
  }

  @Test
  void numbersHaveTheDecimalSignOfTheLanguage() {
    assertEquals("0,5 bis 12 K", Words.of("de").figure("0.5 bis 12 K"));
    assertEquals("0.5", Words.ENGLISH.figure("0.5"));
  }

  @Test
  void titlesWithinALineKeepTheirCapitalInGerman() {
    assertEquals("Saugdruck", Words.of("de").inLine("Saugdruck"));
    assertEquals("suction pressure", Words.ENGLISH.inLine("Suction pressure"));
  }
}
