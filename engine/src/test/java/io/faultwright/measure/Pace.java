package io.faultwright.measure;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Answer;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.resolve.Resolver;
import io.faultwright.run.Runner;
import io.faultwright.run.Status;
import io.faultwright.run.Verdict;
import io.faultwright.syntax.FolderReader;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * How fast parsed records are judged, beside {@link HandWritten}: the same records in the same
 * process, by turns, after a warm-up, in processor time of the thread; every outcome is compared.
 */
final class Pace {
  static final Path HANDBOOK = Path.of("src/test/resources/io/faultwright/measure/pace");
  static final String SYMPTOM = "room-too-warm";
  private static final long SEED = 20260302;
  private static final int WARM_UP = 6;
  private static final ThreadMXBean PROCESSOR = ManagementFactory.getThreadMXBean();

  private final Runner runner;
  private final List<Situation> records;
  private final Object[] judged;

  private Pace(Runner runner, List<Situation> records) {
    this.runner = runner;
    this.records = records;
    this.judged = new Object[records.size()];
  }

  static Pace of(int records) {
    KnowledgeBase knowledge = Resolver.resolve(FolderReader.read(HANDBOOK));
    PaceCases cases = new PaceCases(knowledge, SEED);
    return new Pace(
        new Runner(knowledge, RuleCompiler.compile(knowledge)),
        Stream.generate(cases::next).limit(records).toList());
  }

  /** Arguments: how many records, how many rounds. */
  public static void main(String[] args) {
    Pace pace = of(Integer.parseInt(args[0]));
    pace.requireEqual();
    Rounds ours = new Rounds();
    Rounds byHand = new Rounds();
    List<Double> ratios = new ArrayList<>();
    for (int round = -WARM_UP; round < Integer.parseInt(args[1]); round++) {
      double hand = seconds(pace::byHand);
      double mine = seconds(pace::byRules);
      if (round >= 0) {
        byHand.note(hand);
        ours.note(mine);
        ratios.add(hand / mine);
      }
    }
    System.out.println("by hand   " + byHand + pace.each(byHand));
    System.out.println("by rules  " + ours + pace.each(ours));
    ratios.sort(null);
    System.out.printf(
        Locale.ROOT,
        "throughput of the rules, hand-written being 1: min %.2f, median %.2f, max %.2f%n",
        ratios.get(0),
        ratios.get(ratios.size() / 2),
        ratios.get(ratios.size() - 1));
  }

  private String each(Rounds rounds) {
    return String.format(Locale.ROOT, ", %.2f µs a record", rounds.median() / records.size() * 1e6);
  }

  private static double seconds(Runnable work) {
    long start = PROCESSOR.getCurrentThreadCpuTime();
    work.run();
    return (PROCESSOR.getCurrentThreadCpuTime() - start) / 1e9;
  }

  private void byHand() {
    for (int i = 0; i < records.size(); i++) {
      judged[i] = HandWritten.judge(records.get(i));
    }
  }

  private void byRules() {
    for (int i = 0; i < records.size(); i++) {
      judged[i] = runner.verdict(SYMPTOM, records.get(i));
    }
  }

  /** Both say the same about every record; returns how many answers there are. */
  int requireEqual() {
    Set<Object> answers = new HashSet<>();
    for (Situation record : records) {
      Optional<Answer> hand = HandWritten.judge(record);
      Verdict rules = runner.verdict(SYMPTOM, record);
      boolean same =
          hand.map(answer -> rules.answers().equals(Set.of(answer)) && !rules.contradictory())
              .orElse(rules.status() == Status.CHECK_VALUES);
      if (!same) {
        throw new IllegalStateException(record + ": " + hand + " by hand, " + rules);
      }
      answers.add(hand);
    }
    return answers.size();
  }
}
