package io.faultwright.analysis.completeness;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Answer;
import io.faultwright.model.Fault;
import io.faultwright.model.KnowledgeBase;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds faults that no rule concludes, and faults without remedy or verification. */
public final class FaultAnalysis {
  private FaultAnalysis() {}

  public static List<Finding> findings(KnowledgeBase knowledge) {
    Set<String> concluded =
        knowledge.symptoms().values().stream()
            .flatMap(symptom -> symptom.rules().values().stream())
            .flatMap(rule -> rule.conclusion().answers().stream())
            .filter(answer -> answer instanceof Answer.OfFault)
            .map(Answer::name)
            .collect(Collectors.toSet());
    List<Finding> findings = new ArrayList<>();
    for (Fault fault : knowledge.faults().values()) {
      if (!concluded.contains(fault.id())) {
        findings.add(neverConcluded(fault));
      }
      if (fault.remedy().isEmpty() || fault.verify().isEmpty()) {
        findings.add(withoutRemedy(fault));
      }
    }
    return findings;
  }

  private static Finding neverConcluded(Fault fault) {
    return Finding.of(
        FindingKind.FAULT_NEVER_CONCLUDED,
        fault.place(),
        "no rule concludes the fault `" + fault.id() + "`",
        "add a rule that concludes it, or take it out");
  }

  private static Finding withoutRemedy(Fault fault) {
    String missing =
        fault.remedy().isEmpty() && fault.verify().isEmpty()
            ? "neither `remedy` nor `verify`"
            : fault.remedy().isEmpty() ? "no `remedy`" : "no `verify`";
    return Finding.of(
        FindingKind.FAULT_WITHOUT_REMEDY,
        fault.place(),
        "the fault `" + fault.id() + "` has " + missing,
        "say what to do, and how to see that the repair worked");
  }
}
