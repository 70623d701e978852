package io.faultwright.release;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Signed;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/** The meanings of everything in a knowledge base that can be signed. */
public final class Meanings {
  private final KnowledgeBase kb;
  private final SortedMap<String, byte[]> pictures;
  private final Canon canon;
  private final SortedMap<String, String> known =
      Collections.synchronizedSortedMap(new TreeMap<>());

  /**
   * Meanings.
   *
   * @param pictures that guides may show, by path in the {@code guides} folder
   */
  public Meanings(KnowledgeBase kb, SortedMap<String, byte[]> pictures) {
    this.kb = kb;
    this.pictures = Collections.unmodifiableSortedMap(new TreeMap<>(pictures));
    this.canon = new Canon(kb);
  }

  /** What a signature under something that the knowledge base has would stand for. */
  public Meaning of(Signed signed) {
    Parts parts = new Parts(kb, canon, known);
    switch (signed.kind()) {
      case SYMPTOM -> parts.symptom(signed.id());
      case RULE -> parts.rule(signed);
      case LIMITS -> parts.limitsTable(signed.id());
      case CHART -> parts.chart(signed.id());
      case GUIDE -> parts.guide(signed.id(), pictures);
      case SEQUENCE -> parts.sequence(signed.id());
    }
    return new Meaning(signed, parts.texts());
  }
}
