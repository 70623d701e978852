package io.faultwright.model;

import java.util.SortedSet;

/** What follows from a rule. */
public sealed interface Conclusion {
  /** These faults are present. */
  record Conclude(SortedSet<String> faults) implements Conclusion {
    public Conclude {
      faults = Sorted.set(faults);
    }
  }

  /** These faults are ruled out; alone it answers nothing. */
  record Exclude(SortedSet<String> faults) implements Conclusion {
    public Exclude {
      faults = Sorted.set(faults);
    }
  }

  /** Another symptom is to be worked. */
  record Refer(String symptom) implements Conclusion {}

  /** The rules end here; whom to ask. */
  record Escalate(String to) implements Conclusion {}

  /** The answers a rule with this conclusion gives; none for an exclusion. */
  default SortedSet<Answer> answers() {
    if (this instanceof Conclude conclude) {
      return Sorted.set(conclude.faults().stream().map(Answer.OfFault::new).toList());
    }
    if (this instanceof Refer refer) {
      return Sorted.set(java.util.List.of(new Answer.OfReferral(refer.symptom())));
    }
    if (this instanceof Escalate escalate) {
      return Sorted.set(java.util.List.of(new Answer.OfEscalation(escalate.to())));
    }
    return Sorted.set(java.util.List.<Answer>of());
  }
}
