package io.faultwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Which package may use which; a package without an entry here fails. */
class LayersTest {
  private static final String ROOT = "io.faultwright.";
  private static final Map<String, Set<String>> ARROWS = new TreeMap<>();

  static {
    arrows("source");
    arrows("diagnostic", "source");
    arrows("syntax", "source", "diagnostic");
    arrows("quantity");
    arrows("model", "source", "quantity");
    arrows("finding", "source", "model");
    arrows("words");
    arrows("xml");
    arrows(
        "dmn",
        "source",
        "diagnostic",
        "quantity",
        "model",
        "wording",
        "words",
        "analysis.space",
        "xml");
    arrows("wording", "source", "model", "quantity", "words");
    arrows("translation", "source", "model", "quantity");
    arrows("analysis.translation", "source", "model", "finding", "translation");
    arrows("resolve", "source", "diagnostic", "syntax", "model", "quantity", "operation");
    arrows("compile", "model", "quantity");
    arrows("run", "model", "quantity", "compile");
    arrows("adequacy", "source", "model");
    arrows("sequence");
    arrows("release", "source", "model", "quantity", "finding", "translation");
    arrows("analysis.space", "source", "model", "quantity", "finding", "wording");
    for (String analysis :
        List.of("completeness", "contradiction", "gap", "recognition", "redundancy", "referral")) {
      arrows("analysis." + analysis, "source", "model", "quantity", "finding", "analysis.space");
    }
    arrows(
        "analysis.chart",
        "source",
        "model",
        "quantity",
        "finding",
        "analysis.space",
        "analysis.order");
    arrows(
        "analysis.limits", "source", "model", "quantity", "finding", "wording", "analysis.space");
    arrows("analysis.judge", "model", "quantity");
    arrows(
        "analysis.coverage",
        "source",
        "model",
        "quantity",
        "finding",
        "adequacy",
        "wording",
        "analysis.judge",
        "analysis.space");
    arrows(
        "analysis.mutation",
        "source",
        "model",
        "quantity",
        "finding",
        "adequacy",
        "change",
        "wording",
        "analysis.judge",
        "analysis.space",
        "analysis.coverage",
        "analysis.change");
    arrows(
        "analysis.suggestion",
        "source",
        "model",
        "quantity",
        "finding",
        "adequacy",
        "wording",
        "analysis.judge",
        "analysis.space",
        "analysis.coverage",
        "analysis.mutation");
    arrows("analysis.tolerance", "source", "model", "quantity", "analysis.space");
    arrows("analysis.outcome", "model", "analysis.space");
    arrows("analysis.order", "model", "sequence", "analysis.space", "analysis.outcome");
    arrows("ambiguity", "model", "finding");
    arrows(
        "analysis.ambiguity",
        "source",
        "model",
        "quantity",
        "finding",
        "ambiguity",
        "analysis.space",
        "analysis.outcome");
    arrows("review", "model", "finding");
    arrows("analysis.review", "model", "finding", "review", "analysis.space");
    arrows("quiz", "model", "quantity", "wording", "words");
    arrows(
        "analysis.quiz",
        "source",
        "model",
        "quantity",
        "release",
        "quiz",
        "analysis.judge",
        "analysis.order",
        "analysis.outcome",
        "analysis.space");
    arrows("operation", "quantity", "model");
    arrows("analysis.operation", "source", "quantity", "model", "finding", "wording", "operation");
    arrows(
        "logbook", "source", "diagnostic", "syntax", "quantity", "model", "resolve", "operation");
    arrows("plain", "source", "model");
    arrows("grading");
    arrows("revision", "source", "diagnostic", "syntax");
    arrows("change", "source", "model", "finding");
    arrows(
        "analysis.change",
        "source",
        "model",
        "quantity",
        "finding",
        "wording",
        "change",
        "operation",
        "analysis.space");
    arrows("input", "source", "diagnostic", "syntax", "model", "quantity", "resolve");
    arrows("sheet", "source", "diagnostic", "syntax", "model", "quantity", "resolve", "input");
    arrows("field", "source", "syntax", "model", "quantity", "compile", "run");
    arrows(
        "report",
        "source",
        "diagnostic",
        "model",
        "quantity",
        "finding",
        "adequacy",
        "change",
        "ambiguity",
        "wording",
        "run",
        "field",
        "xml",
        "quiz",
        "grading",
        "handin",
        "words",
        "resolve",
        "operation",
        "logbook");
    arrows("handin", "source", "diagnostic", "syntax", "input", "grading");
  }

  /** These assemble the others, and nothing but the command line may use them. */
  private static final Set<String> ASSEMBLIES = Set.of("analysis", "pipeline");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("io.faultwright");

  private static void arrows(String from, String... to) {
    ARROWS.put(from, Set.of(to));
  }

  @Test
  void everyPackageIsListed() {
    Set<String> unlisted = new TreeSet<>();
    CLASSES.forEach(type -> unlisted.add(packageOf(type)));
    unlisted.removeAll(ARROWS.keySet());
    unlisted.removeAll(ASSEMBLIES);
    assertEquals(Set.of(), unlisted);
  }

  @TestFactory
  List<DynamicTest> arrowsOfEveryPackage() {
    return ARROWS.entrySet().stream()
        .map(
            arrow ->
                DynamicTest.dynamicTest(
                    arrow.getKey(), () -> checkArrows(arrow.getKey(), arrow.getValue())))
        .toList();
  }

  private static void checkArrows(String from, Set<String> to) {
    noClasses()
        .that()
        .resideInAPackage(ROOT + from)
        .should()
        .dependOnClassesThat(
            isOurs("outside of " + to, name -> !name.equals(from) && !to.contains(name)))
        .allowEmptyShould(true)
        .check(CLASSES);
  }

  @Test
  void noCycles() {
    slices().matching(ROOT + "(**)").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void onlySyntaxKnowsYaml() {
    onlyUsers("org.yaml..", "syntax");
  }

  @Test
  void onlyCompileAndRunKnowDrools() {
    onlyUsers("org.drools..", "compile", "run");
    onlyUsers("org.kie..", "compile", "run");
  }

  @Test
  void onlyRevisionKnowsGit() {
    onlyUsers("org.eclipse.jgit..", "revision");
  }

  @Test
  void onlyQuantityKnowsTheStandardOfUnits() {
    onlyUsers("javax.measure..", "quantity");
    onlyUsers("tech.units..", "quantity");
  }

  @Test
  void onlySheetKnowsSpreadsheets() {
    onlyUsers("org.dhatim..", "sheet");
    onlyUsers("org.apache.commons.compress..", "sheet");
  }

  @Test
  void theEngineNeitherPrintsNorWrites() {
    noClasses()
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .check(CLASSES);
  }

  private static void onlyUsers(String library, String... users) {
    Set<String> allowed = Set.copyOf(Arrays.asList(users));
    noClasses()
        .that(isOurs("not " + allowed, name -> !allowed.contains(name)))
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .allowEmptyShould(true)
        .check(CLASSES);
  }

  private static DescribedPredicate<JavaClass> isOurs(
      String what, java.util.function.Predicate<String> packages) {
    return DescribedPredicate.describe(
        "reside in our packages " + what,
        type -> type.getPackageName().startsWith(ROOT) && packages.test(packageOf(type)));
  }

  private static String packageOf(JavaClass type) {
    return type.getPackageName().substring(ROOT.length());
  }
}
