package io.faultwright.report;

import io.faultwright.diagnostic.Problem;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.finding.Severity;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.source.Place;
import io.faultwright.source.Sources;
import io.faultwright.xml.Xml;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A check's report as test results in JUnit XML, which most forges show: a suite for each symptom
 * and one for the rest of the handbook, and in each a test for every kind of finding.
 *
 * <p>The format asks for a time of day; it is always the same one, so that equal input gives equal
 * bytes.
 */
public final class CheckJunit {
  /** The suite of what concerns no symptom. */
  private static final String REST = "handbook";

  private static final String NO_TIME = "1970-01-01T00:00:00";

  private final Surroundings around;
  private final boolean strict;
  private final boolean signOffs;

  /**
   * @param strict whether warnings fail their test; else they stand in the suite's output
   * @param signOffs whether signatures were looked at; what was not looked at is no test
   */
  public CheckJunit(Surroundings around, boolean strict, boolean signOffs) {
    this.around = around;
    this.strict = strict;
    this.signOffs = signOffs;
  }

  /** A check that came to its end; a proof that did not is an error of its test. */
  public String write(KnowledgeBase kb, Sources sources, CheckReport report) {
    CheckText words = new CheckText(kb, sources, Ink.PLAIN);
    List<Suite> suites = new ArrayList<>();
    suites.add(suite(REST, report, words));
    report.symptoms().forEach(symptom -> suites.add(suite(symptom.id(), report, words)));
    return write(report.handbook(), suites);
  }

  /** What keeps a knowledge base from being read, a test for each problem. */
  public String write(Sources sources, List<Problem> problems) {
    ProblemText words = new ProblemText(sources, Ink.PLAIN);
    List<Test> tests = new ArrayList<>();
    for (Problem problem : problems) {
      String name = "problem " + (tests.size() + 1);
      String text = places(problem.places()) + words.problem(problem);
      tests.add(new Test(name, Optional.of(new Outcome("error", problem.message(), text))));
    }
    return write("", List.of(new Suite(SarifLog.UNREADABLE, tests, "")));
  }

  /** A test with what went wrong; without, it passed. */
  private record Test(String name, Optional<Outcome> outcome) {
    boolean is(String element) {
      return outcome.filter(found -> found.element().equals(element)).isPresent();
    }
  }

  /** What went wrong: {@code failure} or {@code error}. */
  private record Outcome(String element, String message, String text) {}

  private record Suite(String name, List<Test> tests, String output) {
    long count(String element) {
      return tests.stream().filter(test -> test.is(element)).count();
    }
  }

  private Suite suite(String name, CheckReport report, CheckText words) {
    List<Finding> own =
        report.findings().stream()
            .filter(finding -> finding.symptom().orElse(REST).equals(name))
            .toList();
    List<Test> tests =
        Arrays.stream(FindingKind.values())
            .filter(kind -> signOffs || !kind.isOfSignOff())
            .map(kind -> new Test(kind.slug(), outcome(kind, name, own, report, words)))
            .toList();
    String passed =
        own.stream()
            .filter(finding -> !fails(finding.kind()))
            .map(finding -> text(finding, words))
            .collect(Collectors.joining());
    return new Suite(name, tests, passed);
  }

  private boolean fails(FindingKind kind) {
    return strict || kind.severity() == Severity.ERROR;
  }

  private Optional<Outcome> outcome(
      FindingKind kind, String suite, List<Finding> own, CheckReport report, CheckText words) {
    List<Finding> found =
        own.stream().filter(finding -> finding.kind() == kind && fails(kind)).toList();
    if (found.isEmpty()) {
      return unproved(kind, suite, report)
          .map(message -> new Outcome("error", message, message + "\n"));
    }
    String more = found.size() > 1 ? " (and " + (found.size() - 1) + " more)" : "";
    String text = found.stream().map(one -> text(one, words)).collect(Collectors.joining());
    return Optional.of(new Outcome("failure", found.get(0).message() + more, text));
  }

  private static Optional<String> unproved(FindingKind kind, String suite, CheckReport report) {
    Stream<String> symptoms =
        report.symptoms().stream()
            .filter(symptom -> symptom.id().equals(suite))
            .filter(symptom -> notComputed(kind, symptom))
            .map(symptom -> "not proved: " + symptom.proof().word());
    Stream<String> charts =
        report.charts().stream()
            .filter(chart -> kind == FindingKind.CHART_DIFFERS && chart.symptom().equals(suite))
            .filter(chart -> chart.proved().isEmpty())
            .map(chart -> "not proved: `" + chart.id() + "` not computed");
    return Stream.concat(symptoms, charts).findFirst();
  }

  private static boolean notComputed(FindingKind kind, SymptomSummary symptom) {
    boolean asked = kind == FindingKind.GAP || kind == FindingKind.CONTRADICTION;
    return asked && symptom.proof() != SymptomSummary.Proof.EXACT;
  }

  private String text(Finding finding, CheckText words) {
    return places(finding.places()) + words.finding(finding);
  }

  private String places(List<Place> places) {
    return places.stream().map(place -> around.words(place) + "\n").collect(Collectors.joining());
  }

  private static String write(String handbook, List<Suite> suites) {
    Xml xml = new Xml().open("testsuites");
    for (int i = 0; i < suites.size(); i++) {
      write(xml, suites.get(i), i, handbook);
    }
    return Xml.DECLARATION + xml.close();
  }

  private static void write(Xml xml, Suite suite, int number, String handbook) {
    xml.open(
        "testsuite",
        "package",
        "faultwright",
        "id",
        Integer.toString(number),
        "name",
        suite.name(),
        "timestamp",
        NO_TIME,
        "hostname",
        "localhost",
        "time",
        "0",
        "tests",
        Integer.toString(suite.tests().size()),
        "failures",
        Long.toString(suite.count("failure")),
        "errors",
        Long.toString(suite.count("error")));
    xml.open("properties").empty("property", "name", "handbook", "value", handbook).close();
    suite.tests().forEach(test -> write(xml, suite, test));
    xml.text("system-out", suite.output()).text("system-err", "").close();
  }

  private static void write(Xml xml, Suite suite, Test test) {
    Object[] names = {"name", test.name(), "classname", suite.name(), "time", "0"};
    if (test.outcome().isEmpty()) {
      xml.empty("testcase", names);
      return;
    }
    Outcome outcome = test.outcome().get();
    xml.open("testcase", names)
        .text(outcome.element(), outcome.text(), "message", outcome.message(), "type", test.name())
        .close();
  }
}
