package io.faultwright.report;

import io.faultwright.adequacy.Difference;
import io.faultwright.adequacy.Measured;
import io.faultwright.adequacy.Mutant;
import io.faultwright.adequacy.MutantStatus;
import io.faultwright.adequacy.MutantStatus.Fate;
import io.faultwright.adequacy.MutationScore;
import io.faultwright.adequacy.Tally;
import io.faultwright.model.Answer;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.wording.RuleText;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Which mistakes put into the rules and limits the cases notice, for people. */
final class MistakesText {
  private final SituationText situations;
  private final Ink ink;
  private final Listing listing;

  MistakesText(KnowledgeBase kb, Ink ink, Listing listing) {
    this.situations = new SituationText(kb);
    this.ink = ink;
    this.listing = listing;
  }

  /** Nothing where none were put in. */
  String of(Measured measured) {
    return measured.mutants().map(this::of).orElse("");
  }

  private String of(List<MutantStatus> mutants) {
    List<MutantStatus> unnoticed = mutants.stream().filter(MistakesText::isUnnoticed).toList();
    int shown = listing.some(unnoticed.size());
    return ink.strong("Mistakes put in")
        + "\n\n"
        + score(MutationScore.of(mutants))
        + byOperator(mutants)
        + "\n"
        + (unnoticed.isEmpty() ? "" : "  not noticed:\n")
        + IntStream.range(0, shown)
            .mapToObj(i -> survivor(unnoticed.get(i)))
            .collect(Collectors.joining())
        + listing.rest(unnoticed.size() - shown)
        + (unnoticed.isEmpty() ? "" : "\n");
  }

  private static boolean isUnnoticed(MutantStatus status) {
    return status.fate() == Fate.SURVIVED || status.fate() == Fate.UNDECIDED;
  }

  private static String score(MutationScore score) {
    Tally tally = score.tally();
    return "  "
        + tally.shown()
        + " of "
        + tally.of()
        + " noticed ("
        + tally.percent()
        + " %)\n"
        + line(score.equivalent(), "left out: no situation has another outcome with them")
        + line(score.undecided(), "undecided within the time: they count as not noticed")
        + "\n";
  }

  private static String line(int number, String words) {
    return number == 0 ? "" : "  " + number + " " + words + "\n";
  }

  private static String byOperator(List<MutantStatus> mutants) {
    Map<Mutant.Operator, Tally> tallies = new TreeMap<>();
    mutants.stream()
        .filter(status -> status.fate() != Fate.EQUIVALENT)
        .forEach(
            status ->
                tallies.merge(
                    status.mutant().operator(),
                    new Tally(status.fate() == Fate.KILLED ? 1 : 0, 1),
                    Tally::plus));
    AlignedRows rows = new AlignedRows();
    tallies.forEach(
        (operator, tally) -> rows.add(List.of(operator.word(), CasesText.tally(tally))));
    return rows.text();
  }

  private String survivor(MutantStatus status) {
    Mutant mutant = status.mutant();
    return "    "
        + mutant.rule().map(rule -> "rule `" + rule + "`: ").orElse("")
        + Columns.printable(mutant.words())
        + "  "
        + ink.frame(CasesText.line(mutant.place()))
        + "\n"
        + status.shownBy().map(this::witness).orElse("      no situation found in time\n");
  }

  private String witness(Difference difference) {
    return "      with "
        + Columns.printable(String.join(", ", situations.lines(difference.situation())))
        + "\n      the rules say "
        + answers(difference.right())
        + ", with the mistake "
        + answers(difference.wrong())
        + "\n";
  }

  private static String answers(Collection<Answer> answers) {
    return answers.isEmpty()
        ? "nothing yet"
        : answers.stream().map(RuleText::answer).collect(Collectors.joining(" and "));
  }
}
