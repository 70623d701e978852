package io.faultwright.translation;

import io.faultwright.model.Catalogue;
import io.faultwright.model.KnowledgeBase;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** A handbook in another language. */
public final class Translation {
  private Translation() {}

  /**
   * The same knowledge base with every text translated for which there is a translation. Ids,
   * conditions and figures stay, and so does what names something else: an escalation target is
   * looked up by {@link KnowledgeBase#said} where it is shown.
   */
  public static KnowledgeBase of(KnowledgeBase knowledge, String language) {
    Catalogue catalogue =
        knowledge
            .wordbook()
            .catalogue(language)
            .orElseGet(() -> new Catalogue(language, new TreeMap<>()));
    Set<String> names = new TreeSet<>();
    KnowledgeBase reworded =
        new Reworded(
                text -> {
                  if (text.name()) {
                    names.addAll(text.keys());
                  }
                  return translated(text, catalogue);
                })
            .of(knowledge);
    return reworded.in(language, only(catalogue, names));
  }

  /** What is left to look up. */
  private static Catalogue only(Catalogue catalogue, Set<String> names) {
    SortedMap<String, Catalogue.Entry> entries = new TreeMap<>(catalogue.entries());
    entries.keySet().retainAll(names);
    return new Catalogue(catalogue.language(), entries);
  }

  private static String translated(ShownText text, Catalogue catalogue) {
    return text.keys().stream()
        .map(catalogue::translation)
        .flatMap(Optional::stream)
        .findFirst()
        .orElse(text.text());
  }
}
