package io.faultwright.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.finding.EventCourse;
import io.faultwright.finding.Finding;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.wording.EventText;
import java.util.ArrayList;
import java.util.List;

/** Small sequences for tests, and what is found of them. */
final class SmallSequences {
  private static final String BASE =
      """
      handbook: { title: T, maker: Brantmoor Cold, revision: "1", date: 2026-11-30, language: en, disclaimer: Invented. }
      equipment:
        families: { fell: { title: Fell } }
        options:
          controller:
            title: Controller
            values: { k1: { title: K1, software: [2.9, 2.10] }, k2: { title: K2, software: [3.0] } }
        models:
          FL-1: { family: fell, options: { controller: k1 } }
          FL-2: { family: fell, options: { controller: k2 } }
      sequences:
        s:
          title: S
          outputs: { fan: Fan, valve: Valve, pump: Pump }
          inputs:
            door: { states: [closed, open] }
            call: { states: [none, made] }
            reset-button: Reset
          start: a
      """;

  /** What is found of a sequence, each with its course; all courses were gone by the machine. */
  static List<String> found(String sequence) {
    String text = BASE + sequence.indent(4);
    return new Pipeline(Scope.ALL, Watch.NOBODY)
        .check(new Sources(List.of(SourceFile.of("rules.yaml", text)))).report().findings().stream()
            .map(SmallSequences::told)
            .toList();
  }

  private static String told(Finding finding) {
    List<String> told = new ArrayList<>();
    told.add(finding.kind().slug());
    told.add(finding.message());
    told.add(finding.help());
    finding.course().ifPresent(course -> told.add(told(course)));
    return String.join("\n", told);
  }

  private static String told(EventCourse course) {
    List<String> entries = new ArrayList<>();
    course.set().forEach((time, seconds) -> entries.add(time + "=" + seconds));
    for (EventCourse.Entry entry : course.entries()) {
      entries.add(
          entry.seconds() + " " + entry.event().map(EventText::of).or(entry::phase).orElseThrow());
    }
    entries.add(course.end().toString());
    return String.join(", ", entries);
  }

  static void finds(String sequence, String... expected) {
    assertEquals(
        String.join("\n\n", expected).strip(), String.join("\n\n", found(sequence)).strip());
  }

  private SmallSequences() {}
}
