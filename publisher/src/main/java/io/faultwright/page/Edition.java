package io.faultwright.page;

import io.faultwright.finding.Finding;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;

/**
 * What a handbook is made of besides the knowledge base.
 *
 * @param charts drawings of each symptom, in order, as standalone SVG files
 * @param findings what the checking found, printed in drafts
 * @param pictures paths of the pictures there are, relative to the {@code guides} folder
 * @param draft whether it may not be worked by yet
 */
public record Edition(
    SortedMap<String, List<String>> charts,
    List<Finding> findings,
    Set<String> pictures,
    boolean draft) {
  public Edition {
    findings = List.copyOf(findings);
    pictures = Set.copyOf(pictures);
  }
}
