package io.faultwright.page;

import io.faultwright.adequacy.Difference;
import io.faultwright.adequacy.Mutant;
import io.faultwright.adequacy.MutantStatus;
import io.faultwright.adequacy.MutantStatus.Fate;
import io.faultwright.adequacy.MutationScore;
import io.faultwright.adequacy.Tally;
import io.faultwright.model.Answer;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.page.CasesSheet.Item;
import io.faultwright.page.CasesSheet.Mistakes;
import io.faultwright.page.CasesSheet.Survivor;
import io.faultwright.page.HeatTable.Row;
import io.faultwright.wording.RuleText;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Mistakes put into rules and limits, for the page on the recorded cases. */
final class MistakeItems {
  private final RuleText words;

  MistakeItems(KnowledgeBase kb) {
    this.words = new RuleText(kb);
  }

  Mistakes of(List<MutantStatus> mutants) {
    return new Mistakes(
        score(MutationScore.of(mutants)),
        kinds(mutants),
        mutants.stream()
            .filter(one -> one.fate() == Fate.SURVIVED || one.fate() == Fate.UNDECIDED)
            .map(this::survivor)
            .toList());
  }

  private static String score(MutationScore score) {
    Tally tally = score.tally();
    return tally.shown()
        + " of "
        + tally.of()
        + " are noticed by a case ("
        + tally.percent()
        + " %). "
        + score.equivalent()
        + " more change no outcome and do not count. "
        + (score.undecided() == 0
            ? ""
            : "Of " + score.undecided() + " it is not known whether they change any.");
  }

  private static HeatTable kinds(List<MutantStatus> mutants) {
    Map<Mutant.Operator, Tally> tallies = new TreeMap<>();
    mutants.stream()
        .filter(one -> one.fate() != Fate.EQUIVALENT)
        .forEach(
            one ->
                tallies.merge(
                    one.mutant().operator(),
                    new Tally(one.fate() == Fate.KILLED ? 1 : 0, 1),
                    Tally::plus));
    return new HeatTable(
        "Mistakes that are noticed",
        "Kind",
        false,
        List.of(List.of("noticed")),
        tallies.entrySet().stream()
            .map(
                one ->
                    new Row(
                        one.getKey().word().replace('-', ' '),
                        List.of(HeatCells.count(one.getValue()))))
            .toList());
  }

  private Survivor survivor(MutantStatus status) {
    Mutant mutant = status.mutant();
    Optional<Difference> shown = status.shownBy();
    return new Survivor(
        mutant.rule().orElse(""),
        new Item(mutant.words(), CasesSheets.line(mutant.place())),
        shown.map(one -> facts(one.situation())).orElse(List.of()),
        shown.map(one -> answers(one.right())).orElse(""),
        shown.map(one -> answers(one.wrong())).orElse(""));
  }

  /** As a case would give it. */
  private List<Fact> facts(Situation situation) {
    return Stream.concat(
            situation.equipment().entrySet().stream()
                .map(fact -> new Fact(fact.getKey(), fact.getValue())),
            situation.readings().entrySet().stream()
                .map(fact -> new Fact(fact.getKey(), words.value(fact.getKey(), fact.getValue()))))
        .toList();
  }

  private static String answers(Collection<Answer> answers) {
    return answers.isEmpty()
        ? "nothing yet"
        : answers.stream().map(RuleText::answer).collect(Collectors.joining(" and "));
  }
}
