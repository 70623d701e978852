package io.faultwright.field;

import io.faultwright.model.Answer;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** How often each fault was confirmed. */
final class FaultCounts {
  private final Collection<Fault> faults;
  private final Map<String, Long> counted = new HashMap<>();

  FaultCounts(KnowledgeBase kb) {
    this.faults = kb.faults().values();
  }

  /** Counts what was found in a job; each fault of several once. */
  void add(Collection<Answer> confirmed) {
    for (Answer answer : confirmed) {
      if (answer instanceof Answer.OfFault) {
        counted.merge(answer.name(), 1L, Long::sum);
      }
    }
  }

  /** The update of every fault, in the order of their ids. */
  List<FrequencyUpdate> updates() {
    BigFraction before =
        faults.stream().map(Fault::frequency).reduce(BigFraction.ZERO, BigFraction::add);
    long jobs = counted.values().stream().mapToLong(Long::longValue).sum();
    BigFraction after = before.add(BigFraction.of(jobs, 1));
    return faults.stream().map(fault -> update(fault, before, after)).toList();
  }

  private FrequencyUpdate update(Fault fault, BigFraction before, BigFraction after) {
    long count = counted.getOrDefault(fault.id(), 0L);
    BigFraction updated = fault.frequency().add(BigFraction.of(count, 1));
    return new FrequencyUpdate(
        fault.id(),
        fault.frequency(),
        count,
        fault.frequency().divide(before),
        updated.divide(after));
  }
}
