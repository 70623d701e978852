package io.faultwright.pipeline;

import io.faultwright.ambiguity.Distinction;
import io.faultwright.ambiguity.Distinctions;
import io.faultwright.ambiguity.Prospect;
import io.faultwright.ambiguity.Prospect.Open;
import io.faultwright.ambiguity.SymptomFaults;
import io.faultwright.analysis.ambiguity.AmbiguityAnalysis;
import io.faultwright.analysis.ambiguity.CaseProspect;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.compile.RuleCompiler;
import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.Answer;
import io.faultwright.model.Case;
import io.faultwright.model.FaultPair;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Symptom;
import io.faultwright.resolve.Resolver;
import io.faultwright.run.Runner;
import io.faultwright.run.Verdict;
import io.faultwright.source.Sources;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Which readings tell which faults apart, and what a case leaves open; what is said of single
 * situations is confirmed by Drools.
 */
public final class TellingApart {
  private final KnowledgeBase kb;
  private final Runner runner;
  private final Watch watch;

  /**
   * For the knowledge base in these files.
   *
   * @throws Unreadable with every problem of every file
   */
  public TellingApart(Sources sources, Watch watch) {
    watch.phase("read");
    this.kb = Resolver.resolve(sources);
    watch.phase("compile");
    this.runner = new Runner(kb, RuleCompiler.compile(kb));
    this.watch = watch;
  }

  public KnowledgeBase knowledge() {
    return kb;
  }

  /**
   * What tells faults apart.
   *
   * @param symptom the only symptom to look at; absent: all
   * @param faults none: every two; one: this from all others; several: these from each other
   * @throws Unreadable where there is no such symptom or fault
   * @throws InternalDisagreement where Drools does not conclude two faults that are said to be
   */
  public Distinctions distinctions(Optional<String> symptom, List<String> faults) {
    Scope scope = new Scope(symptom, Optional.empty());
    scope.requireSymptom(kb);
    require(faults, kb.faults().keySet(), "fault");
    watch.phase("analyses");
    List<SymptomFaults> found = all(scope.symptoms(kb), pair -> concerns(faults, pair));
    Set<FaultPair> pairs = new TreeSet<>();
    found.forEach(one -> one.pairs().forEach(pair -> pairs.add(pair.faults())));
    watch.phase("elsewhere");
    List<SymptomFaults> others = all(others(scope, pairs), pairs::contains);
    Elsewheres elsewheres = new Elsewheres(Stream.of(found, others).flatMap(List::stream).toList());
    watch.phase("replay");
    return new Distinctions(
        kb.handbook().title(), found.stream().map(this::confirmed).map(elsewheres::added).toList());
  }

  private List<SymptomFaults> all(List<Symptom> symptoms, Predicate<FaultPair> wanted) {
    AtomicInteger done = new AtomicInteger();
    return symptoms.parallelStream()
        .map(
            symptom -> {
              SymptomFaults pairs =
                  new AmbiguityAnalysis(SymptomSpace.of(kb, symptom)).pairs(wanted);
              watch.step(done.incrementAndGet(), symptoms.size());
              return pairs;
            })
        .filter(pairs -> !pairs.pairs().isEmpty())
        .toList();
  }

  /** Symptoms out of scope that may know something of one of the pairs. */
  private List<Symptom> others(Scope scope, Set<FaultPair> pairs) {
    return kb.symptoms().values().stream()
        .filter(symptom -> !scope.concerns(symptom.id()))
        .filter(symptom -> pairs.stream().anyMatch(pair -> concludes(symptom, pair)))
        .toList();
  }

  private static boolean concerns(List<String> faults, FaultPair pair) {
    boolean one = faults.contains(pair.one());
    boolean other = faults.contains(pair.other());
    return faults.isEmpty() || (faults.size() == 1 ? one || other : one && other);
  }

  private void require(List<String> ids, Collection<String> known, String noun) {
    Problems problems = new Problems();
    ids.stream()
        .filter(id -> !known.contains(id))
        .map(
            id ->
                new Problem(
                    List.of(), "there is no " + noun + " `" + id + "`", NearMatch.help(id, known)))
        .forEach(problems::add);
    if (!problems.isEmpty()) {
      throw new Unreadable(problems.sorted());
    }
  }

  private SymptomFaults confirmed(SymptomFaults symptom) {
    return symptom.with(pair -> pair.always() ? pair : confirmed(symptom.symptom(), pair));
  }

  private Distinction confirmed(String symptom, Distinction pair) {
    Situation witness = pair.overlap().orElseThrow().witness();
    SortedSet<Answer> told = runner.verdict(symptom, witness).answers();
    for (String fault : List.of(pair.faults().one(), pair.faults().other())) {
      if (!told.contains(new Answer.OfFault(fault))) {
        throw new InternalDisagreement(
            symptom + ": Drools does not conclude " + fault + " for " + witness);
      }
    }
    return pair.confirmed();
  }

  private static boolean concludes(Symptom symptom, FaultPair faults) {
    SortedSet<Answer> answers = new TreeSet<>();
    symptom.rules().values().forEach(rule -> answers.addAll(rule.conclusion().answers()));
    return answers.contains(new Answer.OfFault(faults.one()))
        && answers.contains(new Answer.OfFault(faults.other()));
  }

  /**
   * A case with what it leaves open.
   *
   * @param verdict what the rules say of the case as it is
   */
  public record Ahead(Prospect prospect, Verdict verdict) {}

  /**
   * What a recorded case leaves open, and what to read next.
   *
   * @throws Unreadable where there is no such case, or its symptom contradicts itself everywhere
   * @throws InternalDisagreement where Drools tells something else of an example
   */
  public Ahead ahead(String id) {
    require(List.of(id), kb.cases().keySet(), "case");
    Case recorded = kb.cases().get(id);
    watch.phase("analyses");
    Symptom symptom = kb.symptoms().get(recorded.symptom());
    Prospect prospect =
        CaseProspect.of(SymptomSpace.of(kb, symptom), recorded)
            .orElseThrow(() -> tooManyAnswers(symptom));
    watch.phase("replay");
    prospect.open().forEach(open -> require(symptom.id(), open));
    return new Ahead(prospect, runner.verdict(symptom.id(), recorded.given()));
  }

  private static Unreadable tooManyAnswers(Symptom symptom) {
    return new Unreadable(
        List.of(
            new Problem(
                List.of(symptom.place()),
                "the rules of `" + symptom.id() + "` contradict each other in too many ways",
                "mend what `check` finds in it first")));
  }

  private void require(String symptom, Open open) {
    SortedSet<Answer> told = runner.verdict(symptom, open.example()).answers();
    if (!told.equals(open.answers())) {
      throw new InternalDisagreement(
          symptom
              + ": Drools tells "
              + told
              + ", not "
              + open.answers()
              + ", for "
              + open.example());
    }
  }
}
