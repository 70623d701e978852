package io.faultwright.measure;

import io.faultwright.analysis.contradiction.ContradictionAnalysis;
import io.faultwright.analysis.gap.GapAnalysis;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.finding.Finding;
import io.faultwright.finding.Share;
import io.faultwright.model.KnowledgeBase;
import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.kie.dmn.validation.dtanalysis.model.DTAnalysis;

/**
 * Times the analyses on generated tables, in this process, after a warm-up on smaller ones. What is
 * timed is a symptom's space with its gaps and contradictions, regions and witnesses included;
 * reading the YAML and running Drools are not.
 */
public final class Benchmark {
  private static final long WARM_UP_NANOS = 10_000_000_000L;
  private static final long SEED = 20260302;

  /** How many rules are taken out, and how many widened, where there is something to find. */
  private static final int DEFECTS = 5;

  private Benchmark() {}

  /**
   * Arguments: what to measure and how.
   *
   * <pre>
   * reference RULES COLUMNS ROUNDS     ours against the reference on one table
   * damaged RULES COLUMNS ROUNDS       ours alone on such a table
   * proof RULES COLUMNS ROUNDS         nothing to find: the proof
   * growth RULES COLUMNS ROUNDS        the proof, against a tenth of the rules
   * share RULES CONDITIONS COLUMNS VALUES ROUNDS
   * process FOLDER ROUNDS              ./faultwright check FOLDER as a process
   * </pre>
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    if (args[0].equals("process")) {
      process(Path.of(args[1]), number(args, 2));
      return;
    }
    warmUp();
    switch (args[0]) {
      case "reference" -> reference(damaged(number(args, 1), number(args, 2)), number(args, 3));
      case "damaged" -> ours(damaged(number(args, 1), number(args, 2)), number(args, 3));
      case "proof" -> ours(partition(number(args, 1), number(args, 2)), number(args, 3));
      case "growth" -> growth(number(args, 1), number(args, 2), number(args, 3));
      case "share" -> share(args);
      default -> throw new IllegalArgumentException("nothing to measure is called " + args[0]);
    }
  }

  private static int number(String[] args, int at) {
    return Integer.parseInt(args[at]);
  }

  private static Table partition(int rules, int columns) {
    return PartitionTable.of(Columns.mixed(columns), rules, rules, SEED);
  }

  private static Table damaged(int rules, int columns) {
    Defects defects = new Defects(SEED);
    int all = rules + DEFECTS;
    Table whole = PartitionTable.of(Columns.coarse(columns), all, all, SEED);
    return defects.widened(defects.without(whole, DEFECTS), DEFECTS);
  }

  private static void warmUp() {
    warmUp(TableBase.knowledge(damaged(60, 8)));
  }

  private static void warmUp(KnowledgeBase knowledge) {
    for (int round = 0; round < 60; round++) {
      findings(knowledge);
    }
  }

  /** As long for either side: what takes longer gets fewer rounds. */
  private static void warmUpForSeconds(Supplier<?> work) {
    long end = System.nanoTime() + WARM_UP_NANOS;
    do {
      work.get();
    } while (System.nanoTime() < end);
  }

  /** What our analyses found. */
  private record Found(List<Finding> gaps, List<Finding> contradictions) {
    @Override
    public String toString() {
      return gaps.size() + " gaps, " + contradictions.size() + " contradictions";
    }
  }

  private static Found findings(KnowledgeBase knowledge) {
    SymptomSpace space = space(knowledge);
    return new Found(GapAnalysis.findings(space), ContradictionAnalysis.findings(space));
  }

  private static SymptomSpace space(KnowledgeBase knowledge) {
    return SymptomSpace.of(knowledge, knowledge.symptoms().get(TableBase.SYMPTOM));
  }

  private static void reference(Table table, int rounds) {
    KnowledgeBase knowledge = TableBase.knowledge(table);
    DmnReference reference = DmnReference.inNumbers(table);
    warmUpForSeconds(() -> findings(knowledge));
    warmUpForSeconds(reference::analyse);
    Rounds ours = new Rounds();
    Rounds theirs = new Rounds();
    for (int round = 0; round < rounds; round++) {
      Found found = ours.time(() -> findings(knowledge));
      DTAnalysis analysis = theirs.time(reference::analyse);
      if (round == 0) {
        compare(
            table,
            OurJudgement.of(table, found.gaps(), found.contradictions()),
            reference.judgement(analysis));
      }
    }
    print("ours", ours);
    print("reference", theirs);
    System.out.printf(Locale.ROOT, "ratio of medians %.1f%n", theirs.median() / ours.median());
  }

  private static void compare(Table table, Judgement ours, Judgement theirs) {
    BigInteger volume = new Boxes(table, ours.gaps()).volume();
    BigInteger expected = new Boxes(table, theirs.gaps()).volume();
    if (!volume.equals(expected) || !ours.overlaps().equals(theirs.overlaps())) {
      throw new IllegalStateException(
          "gap volume " + volume + " against " + expected + ", " + ours + " against " + theirs);
    }
    System.out.println(
        "equal: gap volume " + volume + ", " + ours.overlaps().size() + " overlapping pairs");
  }

  private static double ours(Table table, int rounds) {
    KnowledgeBase knowledge = TableBase.knowledge(table);
    Rounds times = new Rounds();
    Memory.reset();
    for (int round = 0; round < rounds; round++) {
      Found found = times.time(() -> findings(knowledge));
      if (round == 0) {
        System.out.println(table.rows().size() + " rules: " + found);
      }
    }
    print("ours", times);
    System.out.println("heap at most " + Memory.peakHeap() + " MB");
    return times.median();
  }

  private static void growth(int rules, int columns, int rounds) {
    double tenth = ours(partition(rules / 10, columns), rounds);
    double whole = ours(partition(rules, columns), rounds);
    System.out.printf(Locale.ROOT, "ratio of medians %.1f%n", whole / tenth);
    Memory.peakResident(ProcessHandle.current().pid())
        .ifPresent(resident -> System.out.println("resident at most " + resident + " MB"));
  }

  private static void share(String[] args) {
    List<Column> columns = Columns.choices(number(args, 3), number(args, 4));
    Table table = WideTable.of(columns, number(args, 1), number(args, 2), SEED);
    KnowledgeBase knowledge = TableBase.knowledge(table);
    Rounds times = new Rounds();
    for (int round = 0; round < number(args, 5); round++) {
      Share share = times.time(() -> shareOfGaps(space(knowledge)));
      if (round == 0) {
        System.out.println(share);
      }
    }
    print("share of the gaps", times);
    Memory.peakResident(ProcessHandle.current().pid())
        .ifPresent(resident -> System.out.println("resident at most " + resident + " MB"));
  }

  private static Share shareOfGaps(SymptomSpace space) {
    return space.share(GapAnalysis.gap(space));
  }

  private static void process(Path folder, int rounds) throws IOException, InterruptedException {
    Rounds times = new Rounds();
    long resident = 0;
    for (int round = 0; round < rounds; round++) {
      long start = System.nanoTime();
      Process process =
          new ProcessBuilder("./faultwright", "check", folder.toString())
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      while (process.isAlive()) {
        resident = Math.max(resident, Memory.peakResident(process.pid()).orElse(0));
        Thread.sleep(20);
      }
      times.note((System.nanoTime() - start) / 1e9);
      System.out.println("exit " + process.exitValue());
    }
    print("./faultwright check", times);
    System.out.println("resident at most " + resident + " MB");
  }

  private static void print(String what, Rounds rounds) {
    System.out.println(what + ": " + rounds);
  }
}
