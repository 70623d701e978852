package io.faultwright.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.faultwright.diagnostic.Unreadable;
import io.faultwright.finding.EventCourse;
import io.faultwright.finding.Finding;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.wording.EventText;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Small sequences, each with a mistake of a trainer: what is told of it, and on which course. */
class SequenceChecksTest {
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
  private static List<String> found(String sequence) {
    String text = BASE + sequence.indent(4);
    return new Pipeline(Scope.ALL, Watch.NOBODY)
        .check(new Sources(List.of(SourceFile.of("rules.yaml", text)))).report().findings().stream()
            .map(SequenceChecksTest::told)
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

  private static void finds(String sequence, String... expected) {
    assertEquals(
        String.join("\n\n", expected).strip(), String.join("\n\n", found(sequence)).strip());
  }

  @Test
  void linesThatAreReadyAsThePhaseBeginsAreSeenByTheMachineToo() {
    finds(
        """
        phases:
          a: { next: [{ after: 10 s, go: b }] }
          b: { next: [{ when: door is closed, go: c }, { when: call is none, go: d }] }
          c: { next: [{ when: door opens, go: a }] }
          d: { next: [{ when: door opens, go: a }] }
        """,
        """
        lines-at-once
        two lines can be taken at once: `door is closed` to `c`, and `call is none` to `d`
        say which one goes first with `ahead-of`, or tell them apart by a state
        0 a, 10 b, 10""");
  }

  @Test
  void anEventAndTheStateItLeadsTo() {
    finds(
        """
        phases:
          a: { next: [{ when: [door opens, door is open], go: b }, { when: door opens, go: c }] }
          b: { next: [{ when: door is closed, go: a }] }
          c: { next: [{ when: door is closed, go: a }] }
        """,
        """
        lines-at-once
        two lines can be taken at once: `door opens` and `door is open` to `b`, and `door opens` to `c`
        say which one goes first with `ahead-of`, or tell them apart by a state
        0 a, 0 door opens, 0""");
  }

  @Test
  void restlessPhasesDoNotHideWhatElseIsWrong() {
    finds(
        """
        phases:
          a: { next: [{ when: door is open, go: b }] }
          b: { next: [{ when: door is open, go: a }, { when: door is open, after: 5 min, go: c }] }
          c: { next: [{ after: 1 s, go: a }] }
        """,
        """
        phase-never-reached
        phase `c` of `s` is never reached: no line that leads there is ever taken
        mend a line that leads there, or remove the phase
        0 a, 0 door opens, 0 b, 0

        timer-never-expires
        `door is open` and `after 5 min` to `c` in phase `b` never comes
        another line always leads on before; mend the times, or remove this line
        0 a, 0 door opens, 0 b, 0

        sequence-never-rests
        in `s` phase follows phase within one step, without end
        let one of these lines wait for an event or a time
        0 a, 0 door opens, 0 b, 0 a, 0""");
  }

  @Test
  void aLineThatCountsAThousandTimesInOneStepComesToRest() {
    finds(
        """
        counters: { many: { limit: 1000, go: b } }
        phases:
          a: { next: [{ when: door is open, go: a, count: many }] }
          b: { next: [{ when: door closes, go: a, reset: many }] }
        """);
  }

  @Test
  void aLimitThatNoProofCanCountToIsRefused() {
    Unreadable refused =
        assertThrows(
            Unreadable.class,
            () ->
                found(
                    """
                    counters: { many: { limit: 1001, go: a } }
                    phases:
                      a: { next: [{ when: door opens, go: a, count: many }] }
                    """));
    assertEquals("a limit is at most 1000, found `1001`", refused.problems().get(0).message());
  }

  @Test
  void aPhaseThatOnlyLeadsBackToItselfIsNeverLeft() {
    finds(
        """
        phases:
          a: { next: [{ when: door opens, go: b }] }
          b: { stop: yes, next: [{ when: reset-button, go: b }] }
        """,
        """
        phase-never-left
        nothing but itself follows phase `b` of `s`
        add a line below `next`, or write `last: yes` if it is meant so
        0 a, 0 door opens, 0 b, 0""");
  }

  @Test
  void aPhaseMayBeTheLastAndLeadBackToItself() {
    finds(
        """
        counters: { pushes: Pushes }
        phases:
          a: { next: [{ when: door opens, go: b }] }
          b: { stop: yes, last: yes, next: [{ when: reset-button, go: b, count: pushes }] }
        """);
  }

  @Test
  void aCounterMayBeTheOnlyWayOut() {
    finds(
        """
        counters: { pushes: { limit: 3, go: b } }
        phases:
          a: { next: [{ when: door opens, go: a, count: pushes }] }
          b: { stop: yes, next: [{ when: reset-button, go: a, reset: pushes }] }
        """);
  }

  @Test
  void aLimitOfOneLeadsPastThePhaseThatIsWritten() {
    finds(
        """
        counters: { longs: { limit: 1, go: c } }
        phases:
          a: { next: [{ after: 10 s, go: b, count: longs }] }
          b: { next: [{ after: 10 s, go: a }] }
          c: { stop: yes, next: [{ when: reset-button, go: a, reset: longs }] }
        """,
        """
        phase-never-reached
        phase `b` of `s` is never reached: whenever a line that leads there is taken, a counter is at \
        its limit and leads elsewhere
        mend a line that leads there, or remove the phase
        0 a, 0""");
  }

  @Test
  void aCounterThatBeginsAgainTooOftenNeverComesToItsLimit() {
    finds(
        """
        counters: { longs: { limit: 3, go: c } }
        phases:
          a: { next: [{ after: 10 s, go: b, count: longs }] }
          b: { next: [{ after: 10 s, go: a, reset: longs }] }
          c: { stop: yes, next: [{ when: reset-button, go: a, reset: longs }] }
        """,
        """
        phase-never-reached
        phase `c` of `s` is never reached: the counter that leads there is never at its limit
        mend a line that leads there, or remove the phase
        0 a, 0""");
  }

  @Test
  void twoCountersAtTheirLimitsWithOneLine() {
    finds(
        """
        counters: { zeta: { limit: 2, go: c }, alpha: { limit: 2, go: d } }
        phases:
          a: { next: [{ after: 10 s, go: b, count: [zeta, alpha] }] }
          b: { next: [{ after: 10 s, go: a }] }
          c: { stop: yes, next: [{ when: reset-button, go: a, reset: [zeta, alpha] }] }
          d: { stop: yes, next: [{ when: reset-button, go: a, reset: [zeta, alpha] }] }
        """,
        """
        lines-at-once
        two counters come to their limits at once with the line `after 10 s` to `b`: `alpha` leads to \
        `d`, and `zeta` leads to `c`
        let them lead to one phase, or count them in different lines
        0 a, 10 b, 20 a, 30 d, 30""");
  }

  @Test
  void linesAheadOfEachOtherInACircleAreUndecided() {
    List<String> found =
        found(
            """
            phases:
              a:
                next:
                  - { after: 10 s, go: b, ahead-of: c }
                  - { after: 10 s, go: c, ahead-of: d }
                  - { after: 10 s, go: d, ahead-of: b }
              b: { next: [{ when: door opens, go: a }] }
              c: { next: [{ when: door opens, go: a }] }
              d: { next: [{ when: door opens, go: a }] }
            """);
    assertEquals(3, found.size(), found.toString());
    assertEquals(
        """
        lines-at-once
        two lines can be taken at once: `after 10 s` to `b`, and `after 10 s` to `c`
        they go ahead of each other in a circle; take one `ahead-of` away
        0 a, 10""",
        found.get(0));
  }

  @Test
  void whereAThirdLineGoesAheadOfTwoNothingIsLeftToDecide() {
    finds(
        """
        phases:
          a:
            next:
              - { when: door is open, go: b, ahead-of: [c, d] }
              - { when: [door is open, call is made], go: c }
              - { when: call is made, go: d, ahead-of: c }
          b: { next: [{ when: [door is closed, call is none], go: a }] }
          c: { next: [{ when: call is none, go: a }] }
          d: { next: [{ when: call is none, go: a }] }
        """,
        """
        phase-never-reached
        phase `c` of `s` is never reached: no line that leads there is ever taken
        mend a line that leads there, or remove the phase
        0 a, 0

        line-never-taken
        the line `door is open` and `call is made` to `c` in phase `a` is never taken
        mend what it waits for, or remove it
        0 a, 0""");
  }

  @Test
  void whatLiesBehindUndecidedLinesIsNotJudged() {
    finds(
        """
        phases:
          a: { next: [{ after: 10 s, go: b }, { after: 10 s, go: c }] }
          b: { next: [{ when: door opens, go: a }] }
          c: { next: [{ after: 10 s, go: d }] }
          d: { next: [{ after: 10 s, go: a }] }
        """,
        """
        lines-at-once
        two lines can be taken at once: `after 10 s` to `b`, and `after 10 s` to `c`
        say which one goes first with `ahead-of`, or tell them apart by a state
        0 a, 10""");
  }

  @Test
  void ofTwoWaysWithOneEventTheEarlierIsTold() {
    finds(
        """
        phases:
          a: { next: [{ when: door opens, go: b }, { when: call becomes made, go: c }] }
          b: { next: [{ after: 10 min, go: d }] }
          c: { next: [{ after: 1 s, go: d }] }
          d: { stop: yes }
        """,
        """
        phase-never-left
        nothing leads on from phase `d` of `s`
        add a line below `next`, or write `last: yes` if it is meant so
        0 a, 0 call becomes made, 0 c, 1 d, 1""");
  }

  @Test
  void theBuildWithTheShortestCourseIsTold() {
    finds(
        """
        phases:
          a: { next: [{ applies: { controller: k1 }, when: door opens, go: b }, { applies: { controller: k2 }, after: 1 s, go: b }] }
          b: { stop: yes }
        """,
        """
        phase-never-left
        nothing leads on from phase `b` of `s`
        add a line below `next`, or write `last: yes` if it is meant so
        0 a, 1 b, 1""");
  }

  @Test
  void aValueIsMissingOnlyWhereItIsNeeded() {
    finds(
        """
        times: { limit: { lasts: [{ applies: { software: at least 2.10 }, lasts: 6 min }] } }
        phases:
          a: { next: [{ when: door opens, go: b }] }
          b: { next: [{ applies: { software: at least 2.10 }, after: limit, go: a, ahead-of: a }, { when: door closes, go: a }] }
        """);
  }

  @Test
  void aValueIsMissingOnTheVersionThatComesThere() {
    finds(
        """
        counters: { longs: { limit: [{ applies: { software: below 2.10 }, limit: 2 }, { applies: { software: above 2.10 }, limit: 3 }], go: c } }
        phases:
          a: { next: [{ after: 10 s, go: b, count: longs }] }
          b: { next: [{ after: 10 s, go: a }] }
          c: { stop: yes, next: [{ when: reset-button, go: a, reset: longs }] }
        """,
        """
        time-unclear
        `longs` of `s` has no value for `FL-1 with software 2.10`
        add a value that applies to it
        0 a, 0""");
  }

  @Test
  void outputsThatNeverComeOnOrNeverGoOff() {
    finds(
        """
        times: { early: 40 s, late: 1 min }
        phases:
          a: { on: [fan from late until early, pump from 2 min, valve until 3 min], next: [{ after: 2 min, go: b }] }
          b: { on: [pump from 2 min until 3 min], next: [{ when: door is open, after: 3 min, go: a }, { when: door is closed, after: 4 s, go: a }] }
        """,
        """
        timer-never-expires
        `fan` never comes on in phase `a`
        it would go off before it is on; write an `until` that is later than `from`
        0 a, 120 b, 120

        timer-never-expires
        `pump` never comes on in phase `a`
        the phase is always over before; mend the times, or remove the output here
        0 a, 120 b, 120

        timer-never-expires
        `until 3 min` of `valve` in phase `a` never comes
        the phase is always over before; mend the times, or remove the `until`
        0 a, 120 b, 120""");
  }

  @Test
  void linesThatCannotComeSayWhy() {
    finds(
        """
        phases:
          a:
            next:
              - { when: [door is closed, door is open], after: 5 min, go: b }
              - { when: door opens, go: b }
              - { applies: { controller: k1, software: 3.0 }, after: 1 min, go: b }
          b: { next: [{ after: 10 s, go: a }] }
        """,
        """
        line-never-taken
        the line `door is closed` and `door is open` and `after 5 min` to `b` in phase `a` is never \
        taken: its states cannot hold together
        mend them, or remove it
        0 a, 0

        line-never-taken
        the line `after 1 min` to `b` in phase `a` is never taken: it is for no build that comes there
        mend its `applies`, or remove it
        0 a, 0""");
  }

  @Test
  void aTimeThatCanBeSetIsLookedAtAtBothEnds() {
    finds(
        """
        times: { drip: { lasts: 2 min, set: 1 to 10 min }, lock: { lasts: 1 min, set: 30 s to 3 min } }
        phases:
          a: { on: [fan until lock, valve from drip], next: [{ when: door opens, go: b }] }
          b: { next: [{ after: drip, go: a }, { after: 5 min, go: a }] }
        never-together: [[fan, valve]]
        """,
        """
        energised-together
        `fan` and `valve` are on together in phase `a`
        switch one of them off in this phase, or for a part of it with `from` and `until`
        lock=180, 0 a, 120""");
  }

  /**
   * The timer has to be over while `c` still lasts, so the door opens after 5 s at the earliest.
   */
  @Test
  void eventsComeLateEnoughForWhatHasToBeOverLater() {
    finds(
        """
        timers: { t: { lasts: 10 s, during: [a, b, c] } }
        phases:
          a: { next: [{ when: door opens, go: b }] }
          b: { next: [{ after: 3 s, go: c }] }
          c: { next: [{ after: 2 s, go: e }, { when: reset-button, after: t, go: d }] }
          d: { stop: yes }
          e: { next: [{ when: door closes, go: a }] }
        """,
        """
        phase-never-left
        nothing leads on from phase `d` of `s`
        add a line below `next`, or write `last: yes` if it is meant so
        0 a, 5 door opens, 5 b, 8 c, 10 reset-button, 10 d, 10""");
  }

  /** The door has to open from 2 to 4 s into `b`. */
  @Test
  void eventsComeLateEnoughForALineThatIsOnlyOpenEarly() {
    finds(
        """
        timers: { t: { lasts: 10 s, during: [a, b, c, f] } }
        phases:
          a: { next: [{ when: call becomes made, go: b }] }
          b:
            next:
              - { when: door opens, after: 5 s, go: e, ahead-of: c }
              - { when: door opens, after: 2 s, go: c }
          c: { next: [{ after: 3 s, go: f }] }
          d: { stop: yes }
          e: { next: [{ when: [door is closed, call is none], go: a }] }
          f: { next: [{ after: 1 s, go: e }, { when: reset-button, after: t, go: d }] }
        """,
        """
        phase-never-left
        nothing leads on from phase `d` of `s`
        add a line below `next`, or write `last: yes` if it is meant so
        0 a, 2 call becomes made, 2 b, 6 door opens, 6 c, 9 f, 10 reset-button, 10 d, 10""");
  }

  /** Both phases together last 5 s at most. */
  @Test
  void aTimerThroughTwoPhasesThatAreOverBefore() {
    finds(
        """
        timers: { t: { lasts: 10 s, during: [a, b] } }
        phases:
          a: { next: [{ when: door opens, go: b, ahead-of: c }, { after: 3 s, go: c }] }
          b: { next: [{ after: 2 s, go: c }, { when: call is made, after: t, go: d }] }
          c: { next: [{ when: door closes, go: a }] }
          d: { next: [{ after: 1 s, go: a }] }
        """,
        """
        phase-never-reached
        phase `d` of `s` is never reached: no line that leads there is ever taken
        mend a line that leads there, or remove the phase
        0 a, 0 door opens, 0 b, 0

        timer-never-expires
        `call is made` and `after t` to `d` in phase `b` never comes
        another line always leads on before; mend the times, or remove this line
        0 a, 0 door opens, 0 b, 2 c, 2""");
  }

  /** The timer ends `b` after 2 s. */
  @Test
  void anOutputThatWouldGoOffAfterATimerEndsThePhase() {
    finds(
        """
        timers: { t: { lasts: 4 s, during: [a, b] } }
        phases:
          a: { next: [{ after: 2 s, go: b }] }
          b: { on: [fan until 3 s, pump until 2 s], next: [{ after: t, go: c }] }
          c: { next: [{ when: door opens, go: a }] }
        """,
        """
        timer-never-expires
        `until 3 s` of `fan` in phase `b` never comes
        the phase is always over before; mend the times, or remove the `until`
        0 a, 2 b, 4 c, 4""");
  }
}
