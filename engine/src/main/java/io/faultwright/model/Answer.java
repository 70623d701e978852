package io.faultwright.model;

import java.util.Comparator;

/** One thing a technician is told at the end. */
public sealed interface Answer extends Comparable<Answer> {
  /** Orders faults before referrals before escalations, then by name. */
  Comparator<Answer> ORDER = Comparator.comparingInt(Answer::rank).thenComparing(Answer::name);

  /** This fault is present. */
  record OfFault(String fault) implements Answer {
    @Override
    public int rank() {
      return 0;
    }

    @Override
    public String name() {
      return fault;
    }
  }

  /** Work this symptom instead. */
  record OfReferral(String symptom) implements Answer {
    @Override
    public int rank() {
      return 1;
    }

    @Override
    public String name() {
      return symptom;
    }
  }

  /** Ask these people. */
  record OfEscalation(String to) implements Answer {
    @Override
    public int rank() {
      return 2;
    }

    @Override
    public String name() {
      return to;
    }
  }

  /** Position among the kinds of answer. */
  int rank();

  /** Id of the fault or symptom, or whom to ask. */
  String name();

  @Override
  default int compareTo(Answer other) {
    return ORDER.compare(this, other);
  }
}
