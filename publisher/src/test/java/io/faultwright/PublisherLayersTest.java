package io.faultwright;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.nio.channels.FileChannel;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Which package of the publisher may use which; the arrows of the architecture as a test. */
class PublisherLayersTest {
  private static final String ROOT = "io.faultwright.";

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new DoNotIncludeTests())
          .importPackages("io.faultwright");

  /** Packages of the engine that only hold values. */
  private static final List<String> VALUES =
      List.of(
          "source",
          "diagnostic",
          "quantity",
          "model",
          "finding",
          "change",
          "adequacy",
          "wording",
          "words");

  /** What each package may use besides itself. */
  private static final Map<String, List<String>> ARROWS =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry(
                  "flow",
                  with(
                      VALUES,
                      "analysis.space",
                      "analysis.judge",
                      "analysis.coverage",
                      "analysis.outcome",
                      "analysis.order",
                      "analysis.chart")),
              Map.entry("font", List.of()),
              Map.entry("layout", List.of("flow", "font", "words")),
              Map.entry("archive", List.of("source", "diagnostic", "syntax", "output")),
              Map.entry("json", List.of()),
              Map.entry("key", List.of("model", "release", "output", "json")),
              Map.entry(
                  "certificate",
                  List.of("source", "diagnostic", "syntax", "grading", "handin", "words", "json")),
              Map.entry("find", with(VALUES, "page", "json")),
              Map.entry("guided", with(VALUES, "flow", "operation", "page", "json")),
              Map.entry(
                  "lesson",
                  with(
                      VALUES,
                      "compile",
                      "run",
                      "analysis.judge",
                      "analysis.space",
                      "flow",
                      "layout",
                      "prose",
                      "page",
                      "render.svg")),
              Map.entry("prose", List.of()),
              Map.entry(
                  "page",
                  with(
                      VALUES,
                      "release",
                      "review",
                      "operation",
                      "plain",
                      "prose",
                      "layout",
                      "render.svg")),
              Map.entry("render.svg", List.of("flow", "font", "layout", "words", "xml")),
              Map.entry("delivery", List.of("model", "quiz", "grading", "page", "json", "words")),
              Map.entry(
                  "render.html",
                  List.of("delivery", "font", "layout", "offline", "page", "prose", "words")),
              Map.entry("render.dita", List.of("page", "words", "xml")),
              Map.entry("render.qti", List.of("delivery", "quiz", "words", "xml")),
              Map.entry("render.text", List.of("page", "words", "report")),
              Map.entry("render.pdf", List.of("font", "layout")),
              Map.entry("offline", List.of("json")),
              Map.entry("output", List.of()),
              Map.entry("piece", List.of("source", "quantity")),
              Map.entry(
                  "site",
                  with(
                      VALUES,
                      "translation",
                      "analysis.space",
                      "find",
                      "guided",
                      "flow",
                      "font",
                      "layout",
                      "page",
                      "render.svg",
                      "render.html",
                      "render.pdf",
                      "render.text",
                      "offline",
                      "piece",
                      "output"))));

  private static List<String> with(List<String> some, String... more) {
    return Stream.concat(some.stream(), Arrays.stream(more)).toList();
  }

  @TestFactory
  Stream<DynamicTest> packagesUseOnlyWhatTheyMay() {
    return ARROWS.entrySet().stream()
        .map(
            arrow ->
                DynamicTest.dynamicTest(
                    arrow.getKey(), () -> arrows(arrow.getKey(), arrow.getValue()).check(CLASSES)));
  }

  private static ArchRule arrows(String from, List<String> to) {
    String[] allowed =
        Stream.concat(Stream.of(from), to.stream()).map(name -> ROOT + name).toArray(String[]::new);
    return noClasses()
        .that()
        .resideInAPackage(ROOT + from)
        .should()
        .dependOnClassesThat(resideInAPackage(ROOT + ".").and(not(resideInAnyPackage(allowed))));
  }

  @Test
  void packagesFormNoCircle() {
    SlicesRuleDefinition.slices().matching(ROOT + "(**)").should().beFreeOfCycles().check(CLASSES);
  }

  @TestFactory
  Stream<DynamicTest> librariesHaveOneUser() {
    return Map.of(
            "freemarker..", "render.html",
            "com.vladsch.flexmark..", "prose",
            "com.google.zxing..", "layout",
            "com.openhtmltopdf..", "render.pdf",
            "org.apache.pdfbox.pdmodel..", "render.pdf",
            "picocli..", "cli",
            "org.yaml..", "syntax")
        .entrySet()
        .stream()
        .sorted(Map.Entry.comparingByKey())
        .map(
            user ->
                DynamicTest.dynamicTest(
                    user.getKey(),
                    () ->
                        noClasses()
                            .that()
                            .resideOutsideOfPackages(
                                ROOT + user.getValue(), ROOT + user.getValue() + "..")
                            .should()
                            .dependOnClassesThat()
                            .resideInAPackage(user.getKey())
                            .allowEmptyShould(true)
                            .check(CLASSES)));
  }

  @Test
  void onlyOutputWritesFiles() {
    noClasses()
        .that()
        .resideOutsideOfPackage(ROOT + "output")
        .should()
        .callMethodWhere(FileWriting.CALL)
        .orShould()
        .callConstructorWhere(FileWriting.OPENING)
        .orShould()
        .dependOnClassesThat()
        .belongToAnyOf(FileChannel.class)
        .check(CLASSES);
  }

  @Test
  void onlyTheCommandLineTouchesStandardStreams() {
    noClasses()
        .that()
        .resideOutsideOfPackages(ROOT + "cli", ROOT + "cli..")
        .should(ACCESS_STANDARD_STREAMS)
        .check(CLASSES);
  }
}
