package io.faultwright.pipeline;

import static io.faultwright.pipeline.SmallSequences.finds;
import static io.faultwright.pipeline.SmallSequences.found;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.faultwright.diagnostic.Unreadable;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Phases, lines and counters, each with a mistake of a trainer: what is told, and on which course.
 */
class SequenceChecksTest {
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
}
