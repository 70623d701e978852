package io.faultwright.measure;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.Answer;
import io.faultwright.model.Domain;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.quantity.Decimals;
import io.faultwright.resolve.Resolver;
import io.faultwright.run.Runner;
import io.faultwright.syntax.FolderReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Random;

/**
 * A table of recorded jobs for the handbook {@code pace}, always the same of a seed: one row in a
 * hundred is broken, in nine of ten others something was confirmed, in one of nine not what the
 * rules say.
 */
final class FieldFile implements Iterator<String> {
  /** One row in so many is broken. */
  static final int BROKEN = 100;

  private static final int CONFIRMED = 10;
  private static final int OTHERWISE = 9;

  private final Random random = new Random(20260302);
  private final KnowledgeBase knowledge = Resolver.resolve(FolderReader.read(Pace.HANDBOOK));
  private final Runner runner = new Runner(knowledge, RuleCompiler.compile(knowledge));
  private final PaceCases cases = new PaceCases(knowledge, 20260302);
  private final List<String> faults = List.copyOf(knowledge.faults().keySet());
  private final List<String> readings = List.copyOf(knowledge.readings().keySet());
  private final long rows;
  private long made;

  /** With so many rows, and a header. */
  FieldFile(long rows) {
    this.rows = rows;
  }

  /** Arguments: how many rows, the file to write. */
  public static void main(String[] args) throws IOException {
    try (BufferedWriter out = Files.newBufferedWriter(Path.of(args[1]))) {
      Iterator<String> lines = new FieldFile(Long.parseLong(args[0]));
      while (lines.hasNext()) {
        out.write(lines.next());
      }
    }
  }

  @Override
  public boolean hasNext() {
    return made <= rows;
  }

  @Override
  public String next() {
    long at = made++;
    if (at == 0) {
      return "job,symptom,model,software," + String.join(",", readings) + ",expect\n";
    }
    List<String> cells = cells(at);
    return (at % BROKEN == 0 ? broken(cells, (int) (at / BROKEN % 5)) : String.join(",", cells))
        + "\n";
  }

  private List<String> cells(long at) {
    Situation given;
    do {
      given = cases.next();
    } while (!runner.verdict(Pace.SYMPTOM, given).status().runnable());
    List<String> cells = new ArrayList<>(List.of("J-" + at, Pace.SYMPTOM));
    cells.add(given.equipment().get(Equipment.MODEL));
    cells.add(given.equipment().getOrDefault(Equipment.SOFTWARE, ""));
    for (String reading : readings) {
      cells.add(text(given.readings().get(reading)));
    }
    cells.add(confirmed(given));
    return cells;
  }

  private static String text(Value value) {
    return value.match(
        Value.Word::id, number -> Decimals.show(number.amount()), () -> "cannot be taken");
  }

  private String confirmed(Situation given) {
    if (random.nextInt(CONFIRMED) == 0) {
      return "";
    }
    List<Answer> said = List.copyOf(runner.verdict(Pace.SYMPTOM, given).answers());
    boolean otherwise = random.nextInt(OTHERWISE) == 0;
    if (otherwise || said.isEmpty()) {
      return faults.get(random.nextInt(faults.size()));
    }
    return said.get(0) instanceof Answer.OfFault fault ? fault.fault() : "escalate";
  }

  /** Broken in one of five ways. */
  private String broken(List<String> cells, int how) {
    int number = 4;
    while (!(domain(number) instanceof Domain.Measured)) {
      number++;
    }
    switch (how) {
      case 0 -> cells.set(2, "XX-1");
      case 1 -> cells.set(1, "room-to-warm");
      case 2 -> cells.set(number, "warm");
      case 3 -> cells.add("one too many");
      default -> cells.set(0, "\"J");
    }
    return String.join(",", cells);
  }

  private Domain domain(int cell) {
    return knowledge.readings().get(readings.get(cell - 4)).domain();
  }
}
