package io.faultwright.translation;

import io.faultwright.model.Catalogue;
import io.faultwright.model.KnowledgeBase;
import java.util.Optional;
import java.util.TreeMap;

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
    return new Reworded(text -> translated(text, catalogue)).of(knowledge).in(language);
  }

  private static String translated(ShownText text, Catalogue catalogue) {
    return text.keys().stream()
        .map(catalogue::translation)
        .flatMap(Optional::stream)
        .findFirst()
        .orElse(text.text());
  }
}
