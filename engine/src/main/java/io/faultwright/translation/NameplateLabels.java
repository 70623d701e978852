package io.faultwright.translation;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Model;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The labels of nameplate data in other words, the same for models and for the faults that name
 * them. Two labels never become one.
 */
record NameplateLabels(Map<String, String> labels) {
  static NameplateLabels of(KnowledgeBase knowledge, Reword reword) {
    SortedMap<String, Model> firsts = new TreeMap<>();
    for (Model model : knowledge.equipment().models().values()) {
      model.data().keySet().forEach(label -> firsts.putIfAbsent(label, model));
    }
    offerRefrigerant(knowledge, reword);
    firsts.remove(Model.REFRIGERANT);
    Set<String> taken = new HashSet<>(firsts.keySet());
    taken.add(Model.REFRIGERANT);
    SortedMap<String, String> labels = new TreeMap<>();
    firsts.forEach(
        (label, model) -> {
          String other = reword.text(label, model.place());
          labels.put(label, taken.add(other) ? other : label);
        });
    return new NameplateLabels(labels);
  }

  /** A word of the tool, which may be translated otherwise. */
  private static void offerRefrigerant(KnowledgeBase knowledge, Reword reword) {
    ShownText text = ShownText.name(Model.REFRIGERANT, knowledge.handbook().place(), false);
    reword.rewording().reword(text);
  }

  String reworded(String label) {
    return labels.getOrDefault(label, label);
  }
}
