package io.faultwright.report;

import io.faultwright.ambiguity.Distinction;
import io.faultwright.ambiguity.Distinction.Elsewhere;
import io.faultwright.ambiguity.Distinction.Overlap;
import io.faultwright.ambiguity.Distinction.Single;
import io.faultwright.ambiguity.Distinctions;
import io.faultwright.ambiguity.SymptomFaults;
import io.faultwright.ambiguity.Taking;
import io.faultwright.model.FaultPair;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.stream.Collectors;

/** Which readings tell which faults apart, for people. */
public final class DistinctionText {
  private final SituationText situations;
  private final Wording wording;
  private final Ink ink;

  public DistinctionText(KnowledgeBase kb, Ink ink) {
    this.situations = new SituationText(kb);
    this.wording = new Wording(kb);
    this.ink = ink;
  }

  /**
   * Every symptom: what is not always told apart, then for each set of readings the faults that it
   * tells apart, the easiest first.
   */
  public String overview(Distinctions distinctions) {
    return ink.strong(Columns.printable(distinctions.handbook()))
        + "\n\n"
        + distinctions.symptoms().stream().map(this::overview).collect(Collectors.joining());
  }

  /** Every pair on its own, with what each reading says of it. */
  public String details(Distinctions distinctions) {
    return ink.strong(Columns.printable(distinctions.handbook()))
        + "\n\n"
        + distinctions.symptoms().stream()
            .map(
                symptom ->
                    heading(symptom)
                        + "\n"
                        + symptom.pairs().stream().map(this::detail).collect(Collectors.joining()))
            .collect(Collectors.joining());
  }

  private String heading(SymptomFaults symptom) {
    return ink.strong(Columns.printable(wording.symptom(symptom.symptom())))
        + " ("
        + symptom.symptom()
        + ")\n";
  }

  private String overview(SymptomFaults symptom) {
    List<Distinction> open = symptom.pairs().stream().filter(pair -> !pair.always()).toList();
    return heading(symptom)
        + counts(symptom, open.size())
        + "\n"
        + Block.of(
            "group",
            symptom.groups().stream()
                .flatMap(faults -> Columns.wrapped(List.copyOf(faults)).stream())
                .toList())
        + open.stream().map(this::open).collect(Collectors.joining())
        + (open.isEmpty() ? "" : "\n")
        + told(symptom)
        + easier(symptom)
        + "\n";
  }

  /** Pairs that another symptom tells apart with less effort. */
  private static String easier(SymptomFaults symptom) {
    Map<Elsewhere, List<FaultPair>> byOther = new LinkedHashMap<>();
    symptom.pairs().stream()
        .filter(pair -> pair.always() && pair.elsewhere().isPresent())
        .forEach(
            pair ->
                byOther
                    .computeIfAbsent(pair.elsewhere().orElseThrow(), key -> new ArrayList<>())
                    .add(pair.faults()));
    return byOther.entrySet().stream()
        .map(other -> "  easier " + words(other.getKey()) + "\n" + lines(other.getValue()))
        .collect(Collectors.joining());
  }

  private static String words(Elsewhere other) {
    return "in " + other.symptom() + " by " + Takings.words(other.taking());
  }

  private String counts(SymptomFaults symptom, int open) {
    String counts =
        "  "
            + Counts.of(symptom.faults().size(), "fault")
            + ", "
            + Counts.of(symptom.pairs().size(), "pair")
            + ": ";
    return open == 0
        ? counts + ink.good("all told apart") + "\n"
        : counts + ink.uneasy(open + " not always told apart") + "\n";
  }

  /** A pair that is not always told apart. */
  private String open(Distinction pair) {
    return Block.of("not always", words(pair.faults()))
        + pair.overlap().map(overlap -> both(pair, overlap)).orElse("")
        + pair.cheapest().map(taking -> Block.of("else", Takings.words(taking))).orElse("")
        + elsewhere(pair);
  }

  private String both(Distinction pair, Overlap overlap) {
    String why = overlap.declared() ? "declared as `together`" : "a contradiction";
    return Block.of(
        pair.never() ? "never" : "both at once",
        "in "
            + Shares.words(overlap.share())
            + " of their situations, "
            + why
            + ", by "
            + String.join(", ", overlap.rules()));
  }

  private static String elsewhere(Distinction pair) {
    return pair.elsewhere()
        .map(other -> Block.of(pair.always() ? "easier" : "elsewhere", words(other)))
        .orElse("");
  }

  private static String words(FaultPair faults) {
    return faults.one() + " from " + faults.other();
  }

  /** For each set of readings what it tells apart. */
  private static String told(SymptomFaults symptom) {
    Map<Taking, List<FaultPair>> byReadings = new LinkedHashMap<>();
    symptom.pairs().stream()
        .filter(Distinction::always)
        .sorted(Comparator.comparing(DistinctionText::taking, EASIEST))
        .forEach(
            pair ->
                byReadings
                    .computeIfAbsent(taking(pair), key -> new ArrayList<>())
                    .add(pair.faults()));
    return byReadings.entrySet().stream()
        .map(entry -> "  by " + Takings.words(entry.getKey()) + "\n" + lines(entry.getValue()))
        .collect(Collectors.joining());
  }

  private static final Comparator<Taking> EASIEST =
      Comparator.comparing(Taking::effort)
          .thenComparing(taking -> String.join(" ", taking.readings()));

  /** The nameplate alone where no machine can have both. */
  private static Taking taking(Distinction pair) {
    return pair.cheapest().orElse(Taking.NOTHING);
  }

  private static String lines(List<FaultPair> pairs) {
    StringBuilder text = new StringBuilder();
    for (List<String> others : new FromOthers(pairs).lines()) {
      String indent = "    ";
      for (String line : Columns.wrapped(others)) {
        text.append(indent).append(line).append("\n");
        indent = "      ";
      }
    }
    return text.toString();
  }

  private String detail(Distinction pair) {
    return "  "
        + ink.strong(words(pair.faults()))
        + "\n"
        + (pair.sameMachine() ? "" : Block.of("told apart by", "the nameplate"))
        + pair.overlap().map(overlap -> both(pair, overlap)).orElse("")
        + pair.overlap()
            .map(overlap -> Block.of("for example", situations.lines(overlap.witness())))
            .orElse("")
        + pair.cheapest().map(taking -> Block.of("told apart by", Takings.words(taking))).orElse("")
        + needed(pair.needed())
        + Block.of("alone", pair.singles().stream().map(DistinctionText::single).toList())
        + elsewhere(pair)
        + "\n";
  }

  private static String needed(SortedSet<String> needed) {
    return needed.isEmpty() ? "" : Block.of("never without", String.join(", ", needed));
  }

  private static String single(Single single) {
    return (single.always() ? "always" : Shares.words(single.settles()))
        + " by "
        + Takings.words(single.reading(), single.taking());
  }
}
