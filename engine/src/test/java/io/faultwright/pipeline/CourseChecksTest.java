package io.faultwright.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.List;
import org.junit.jupiter.api.Test;

/** For which machines, and with which settings, the course of a fault is put to the rules. */
class CourseChecksTest {
  private static final String K2 = "applies: { controller: k2 }, ";

  /** On K1 the switch stops the machine as full; on K2 nothing looks at it. */
  private static final String BASE =
      """
      handbook: { title: T, maker: Brantmoor Cold, revision: "1", date: 2026-11-30, language: en, disclaimer: Invented. }
      equipment:
        families: { fell: { title: Fell } }
        options: { controller: { title: Controller, values: { k1: K1, k2: K2 } } }
        models:
          FL-1: { family: fell, options: { controller: k1 } }
          FL-2: { family: fell, options: { controller: k2 } }
      readings:
        stop-shown: { ask: Which stop is shown, values: { long-stop: LONG, full-stop: FULL, none: No stop } }
        limit-set: { ask: Which limit is set, unit: min, range: 0 to 20 }
      faults:
        stuck: { title: Stuck, FAULT remedy: [Isolate and replace it.], verify: [Run a cycle.] }
        full: { title: Full, remedy: [Empty it.], verify: [Run a cycle.] }
      symptoms:
        stops:
          title: The machine stops
          SYMPTOM
          rules:
            long: { when: { stop-shown: long-stop LONG }, conclude: stuck, because: Long. }
            full: { when: { stop-shown: full-stop }, conclude: full, because: Full. }
            none: { when: { stop-shown: none }, escalate: hotline, because: The rules end. }
      sequences:
        heating:
          title: Heating
          outputs: { heater: Heater }
          inputs: { release-switch: { states: [closed, open] } }
          times: { limit: { lasts: 6 min, set: 1 to 9 min, reading: limit-set } }
          start: heating
          phases:
            heating:
              on: [heater]
              next: [{ applies: { controller: k1 }, when: release-switch opens, go: full-stop }, { after: limit, go: long-stop }]
            full-stop: { stop: yes, next: [{ when: release-switch closes, go: heating }] }
            long-stop: { stop: yes, next: [{ when: release-switch closes, go: heating }] }
          outcomes: { stop-shown: stop }
          courses:
            one: { title: Stuck, fault: stuck, COURSE lasts: 10 min, events: [release-switch opens at 3:00] }
      """;

  /**
   * How often the course differs.
   *
   * @param fault put in at the fault, as are {@code symptom}, {@code course} and {@code rule}
   */
  private static long differs(String fault, String symptom, String course, String rule) {
    String text =
        BASE.replace("FAULT ", fault)
            .replace("SYMPTOM", symptom)
            .replace("COURSE ", course)
            .replace("long-stop LONG }", "long-stop" + rule + " }");
    return new Pipeline(Scope.ALL, Watch.NOBODY)
        .check(new Sources(List.of(SourceFile.of("rules.yaml", text)))).report().findings().stream()
            .map(Finding::kind)
            .filter(FindingKind.COURSE_DIFFERS::equals)
            .count();
  }

  private static long differs(String course) {
    return differs("", "", course, "");
  }

  @Test
  void onTheFirstBuildItEndsInAnotherStop() {
    assertEquals(1, differs(""));
  }

  @Test
  void buildsThatTheCourseIsNotToldForDoNotCount() {
    assertEquals(0, differs(K2));
  }

  @Test
  void buildsThatTheFaultIsNotOfDoNotCount() {
    assertEquals(0, differs(K2, "", "", ""));
  }

  @Test
  void buildsThatTheSymptomIsNotOfDoNotCount() {
    assertEquals(0, differs("", "applies: { controller: k2 }", "", ""));
  }

  @Test
  void timesAreSetAsTheCourseSaysIt() {
    assertEquals(0, differs("set: { limit: 2 min }, "));
    assertEquals(1, differs("set: { limit: 4 min }, "));
  }

  @Test
  void theSettingsAreToldToo() {
    assertEquals(0, differs("", "", K2, ", limit-set: at least 6 min"));
    assertEquals(1, differs("", "", K2, ", limit-set: below 6 min"));
  }
}
