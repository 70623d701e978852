package io.faultwright.find;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Synonym;
import io.faultwright.page.Link;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All that an index is made from.
 *
 * @param families ids of the families, sorted
 * @param sources what can be found, in a fixed order
 * @param synonyms what people say
 */
public record Findable(
    List<String> families, List<Source> sources, SortedMap<String, Synonym> synonyms) {
  public Findable {
    families = List.copyOf(families);
    sources = List.copyOf(sources);
    synonyms = Collections.unmodifiableSortedMap(new TreeMap<>(synonyms));
  }

  /**
   * What of a knowledge base can be found.
   *
   * @param refrigerants pages of refrigerants
   */
  public static Findable of(KnowledgeBase kb, Collection<Link> refrigerants) {
    return new Findable(
        List.copyOf(kb.equipment().families().keySet()),
        new Sources(kb).all(refrigerants),
        kb.wordbook().synonyms());
  }
}
