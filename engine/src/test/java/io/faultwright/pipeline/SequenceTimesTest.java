package io.faultwright.pipeline;

import static io.faultwright.pipeline.SmallSequences.finds;

import org.junit.jupiter.api.Test;

/** Times, each with a mistake of a trainer or a trap: what is told, and on which course. */
class SequenceTimesTest {
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
