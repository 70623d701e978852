package io.faultwright.dmn;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import java.nio.charset.StandardCharsets;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Symptoms as files of the Decision Model and Notation, one each, in which every decision is a
 * table of which at most one row holds (hit policy UNIQUE).
 *
 * <p>{@code docs/decisions/rules-as-decision-tables.md} says what becomes of what.
 */
public final class DmnExport {
  /** What the namespace of a symptom's model begins with. */
  static final String NAMESPACE = "urn:faultwright:dmn:";

  private DmnExport() {}

  /**
   * The files by name.
   *
   * @throws io.faultwright.diagnostic.Unreadable where a table would be too long
   */
  public static SortedMap<String, byte[]> files(KnowledgeBase kb) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    for (Symptom symptom : kb.symptoms().values()) {
      String text = new SymptomFile(kb, symptom).write();
      files.put(symptom.id() + ".dmn", text.getBytes(StandardCharsets.UTF_8));
    }
    return files;
  }
}
