package io.faultwright.analysis.published;

import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Rule;
import io.faultwright.model.Symptom;
import io.faultwright.resolve.Resolver;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;

/** Published examples as knowledge bases. */
final class Published {
  private Published() {}

  static KnowledgeBase read(String name) {
    return Resolver.resolve(
        FolderReader.read(Path.of("src", "test", "resources", "published", name)));
  }

  /** The only symptom of a knowledge base. */
  static SymptomSpace space(KnowledgeBase knowledge) {
    return SymptomSpace.of(knowledge, knowledge.symptoms().values().iterator().next());
  }

  /** The space of the same symptom without one of its rules. */
  static SymptomSpace without(KnowledgeBase knowledge, String rule) {
    Symptom whole = knowledge.symptoms().values().iterator().next();
    SortedMap<String, Rule> rules = new TreeMap<>(whole.rules());
    rules.remove(rule);
    return SymptomSpace.of(knowledge, whole.withRules(rules));
  }
}
