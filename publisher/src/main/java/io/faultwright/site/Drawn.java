package io.faultwright.site;

import io.faultwright.page.ChartSheet;
import io.faultwright.piece.FileContent;
import io.faultwright.piece.Fingerprint;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What is made from the charts of a symptom, in one language.
 *
 * @param sheets their pages, in order
 * @param files the drawings, and the same checks as data for guided diagnosis
 * @param from what all of it is made from: all that belongs to the symptom, in all languages
 */
public record Drawn(
    List<ChartSheet> sheets, SortedMap<String, FileContent> files, Fingerprint from) {
  public Drawn {
    sheets = List.copyOf(sheets);
    files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
  }
}
