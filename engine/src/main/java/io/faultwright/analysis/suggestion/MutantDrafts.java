package io.faultwright.analysis.suggestion;

import io.faultwright.adequacy.Difference;
import io.faultwright.adequacy.MutantStatus;
import io.faultwright.analysis.coverage.Sighting;
import io.faultwright.analysis.judge.Judge;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Cases in the making out of the situations that show mistakes no case notices. */
final class MutantDrafts {
  private MutantDrafts() {}

  /** For each symptom its situations, each once, with all the mistakes it was found for. */
  static SortedMap<String, List<Draft>> of(Judge judge, Collection<MutantStatus> mutants) {
    SortedMap<String, Map<Situation, List<String>>> words = new TreeMap<>();
    for (MutantStatus mutant : mutants) {
      mutant.shownBy().ifPresent(found -> add(found, "notices " + mutant.mutant().words(), words));
    }
    SortedMap<String, List<Draft>> drafts = new TreeMap<>();
    words.forEach(
        (id, situations) -> {
          Symptom symptom = judge.knowledge().symptoms().get(id);
          List<Draft> own = new ArrayList<>();
          situations.forEach(
              (situation, closes) ->
                  own.add(new Draft(Sighting.of(judge, symptom, situation), closes, false)));
          drafts.put(id, own);
        });
    return drafts;
  }

  private static void add(
      Difference found, String words, SortedMap<String, Map<Situation, List<String>>> all) {
    all.computeIfAbsent(found.symptom(), key -> new LinkedHashMap<>())
        .computeIfAbsent(found.situation(), key -> new ArrayList<>())
        .add(words);
  }
}
