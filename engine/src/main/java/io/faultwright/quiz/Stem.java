package io.faultwright.quiz;

import io.faultwright.model.FaultPair;
import io.faultwright.model.OwnItem;
import io.faultwright.model.Value;
import java.util.List;
import java.util.Optional;

/** What an item asks, as data; {@code QuizWording} has the words. */
public sealed interface Stem {
  ItemKind kind();

  /** What is shown of a machine; absent where the question is about no single machine. */
  default Optional<Shown> shown() {
    return Optional.empty();
  }

  /** What the readings point to. */
  record WhichFault(String symptom, Shown machine) implements Stem {
    @Override
    public ItemKind kind() {
      return ItemKind.WHICH_FAULT;
    }

    @Override
    public Optional<Shown> shown() {
      return Optional.of(machine);
    }
  }

  /** The fault is one of two: which reading always tells which. */
  record WhatSeparates(String symptom, Shown machine, FaultPair faults) implements Stem {
    @Override
    public ItemKind kind() {
      return ItemKind.WHAT_SEPARATES;
    }

    @Override
    public Optional<Shown> shown() {
      return Optional.of(machine);
    }
  }

  /**
   * Where a reading lies against its limits.
   *
   * @param machine with the readings that the limits follow
   * @param reading id
   * @param value what it is
   */
  record AgainstLimits(Shown machine, String reading, Value.Number value) implements Stem {
    @Override
    public ItemKind kind() {
      return ItemKind.AGAINST_LIMITS;
    }

    @Override
    public Optional<Shown> shown() {
      return Optional.of(machine);
    }
  }

  /** What must be right before a symptom is worked. */
  record WhatFirst(String symptom) implements Stem {
    @Override
    public ItemKind kind() {
      return ItemKind.WHAT_FIRST;
    }
  }

  /** What follows where something that must be right first is not. */
  record FirstFails(String symptom, Shown machine) implements Stem {
    @Override
    public ItemKind kind() {
      return ItemKind.WHAT_FIRST;
    }

    @Override
    public Optional<Shown> shown() {
      return Optional.of(machine);
    }
  }

  /** What the chart asks next. */
  record NextCheck(String symptom, Shown machine) implements Stem {
    @Override
    public ItemKind kind() {
      return ItemKind.NEXT_CHECK;
    }

    @Override
    public Optional<Shown> shown() {
      return Optional.of(machine);
    }
  }

  /**
   * In which order steps are done.
   *
   * @param steps of the handbook, as they are listed for the participant
   */
  record SafeOrder(StepList list, List<StepList.Entry> steps) implements Stem {
    public SafeOrder {
      steps = List.copyOf(steps);
    }

    @Override
    public ItemKind kind() {
      return ItemKind.SAFE_ORDER;
    }
  }

  /** What a trainer asks. */
  record Own(OwnItem item) implements Stem {
    @Override
    public ItemKind kind() {
      return ItemKind.OWN;
    }
  }
}
