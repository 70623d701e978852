package io.faultwright.report;

import io.faultwright.model.Answer;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Model;
import io.faultwright.model.Sorted;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What the remedy needs of the nameplate of the machine in hand, where its model is known. */
final class NameplateFigures {
  private final KnowledgeBase kb;

  NameplateFigures(KnowledgeBase kb) {
    this.kb = kb;
  }

  /** Figures by label; none where more than one model fits, or no concluded fault needs any. */
  SortedMap<String, String> of(CaseRun run) {
    List<Model> models = models(run.recorded().given().equipment());
    SortedMap<String, String> figures = new TreeMap<>();
    if (models.size() == 1) {
      run.trace().answers().stream()
          .filter(Answer.OfFault.class::isInstance)
          .map(answer -> kb.faults().get(answer.name()))
          .filter(Objects::nonNull)
          .flatMap(fault -> fault.nameplate().stream())
          .forEach(label -> models.get(0).nameplate(label).ifPresent(f -> figures.put(label, f)));
    }
    return Sorted.copy(figures);
  }

  /** For instance {@code charge 3.8 kg, refrigerant R-404A}. */
  String line(CaseRun run) {
    return of(run).entrySet().stream()
        .map(figure -> figure.getKey() + " " + figure.getValue())
        .collect(Collectors.joining(", "));
  }

  private List<Model> models(Map<String, String> facts) {
    return kb.equipment().builds().stream()
        .filter(build -> has(build, facts))
        .map(Build::model)
        .distinct()
        .toList();
  }

  private static boolean has(Build build, Map<String, String> facts) {
    return facts.entrySet().stream()
        .allMatch(
            fact -> build.attribute(fact.getKey()).filter(fact.getValue()::equals).isPresent());
  }
}
