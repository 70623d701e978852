package io.faultwright.page;

import io.faultwright.finding.Finding;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * What a handbook is made of besides the knowledge base.
 *
 * @param charts pages of the charts of each symptom, in order
 * @param findings what the checking found, printed in drafts
 * @param pictures pictures that guides may show, by path in the {@code guides} folder
 * @param draft whether it may not be worked by yet
 * @param pdf whether the book is published beside the site
 * @param since the earlier revision whose differences are told, if any
 * @param bulletin what the field is told of this release, if anything
 * @param releases this release and those before it; empty where this is none
 */
public record Edition(
    SortedMap<String, List<ChartSheet>> charts,
    List<Finding> findings,
    SortedMap<String, byte[]> pictures,
    boolean draft,
    boolean pdf,
    Optional<Since> since,
    Optional<Bulletin> bulletin,
    List<Released> releases) {
  public Edition {
    findings = List.copyOf(findings);
    releases = List.copyOf(releases);
  }

  /** One that is no release. */
  public Edition(
      SortedMap<String, List<ChartSheet>> charts,
      List<Finding> findings,
      SortedMap<String, byte[]> pictures,
      boolean draft,
      boolean pdf,
      Optional<Since> since) {
    this(charts, findings, pictures, draft, pdf, since, Optional.empty(), List.of());
  }

  /** Ids of the symptoms that have a pocket card: those that some equipment can show. */
  public static List<String> withCards(KnowledgeBase kb) {
    return kb.symptoms().values().stream()
        .filter(
            symptom ->
                kb.equipment().builds().stream()
                    .anyMatch(build -> build.satisfies(symptom.applies())))
        .map(Symptom::id)
        .toList();
  }
}
