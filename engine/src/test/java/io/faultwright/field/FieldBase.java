package io.faultwright.field;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.pipeline.FieldRuns;
import io.faultwright.pipeline.InputRun;
import io.faultwright.resolve.ColumnMap;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.BufferedReader;
import java.io.StringReader;
import java.util.List;
import java.util.function.Consumer;

/** A small knowledge base of which jobs can be recorded; every figure is invented. */
public final class FieldBase {
  static final SourceFile FILE =
      new SourceFile(
          "handbook.yaml",
          """
          handbook:
            { title: Small, maker: Brantmoor Cold, revision: "1", date: 2026-03-02, language: en,
              disclaimer: Made up. }
          equipment:
            families: { fell: { title: Fell }, tarn: { title: Tarn } }
            options:
              controller: { title: C, values: { k1: { title: K1, software: [2.9, 2.10, 3.0] } } }
            models:
              FL-1: { title: Fell 1, family: fell, options: { controller: k1 } }
              TN-2: { title: Tarn 2, family: tarn, options: { controller: k1 } }
          readings:
            frost: { ask: "How is the coil?", values: [even, part, none] }
            pressure: { ask: "Which pressure?", unit: bar(g), range: -1 to 12, resolution: 0.1 }
            line: { ask: "How warm is the line?", unit: °C, range: -40 to 40, resolution: 0.5 }
            room: { ask: "How warm is the room?", unit: °C, range: -40 to 40, resolution: 0.5 }
            apart: { difference: [line, room] }
          faults:
            dirty: { title: Dirty, remedy: [Clean it.], verify: [Look.], frequency: 3 }
            leak:
              title: Leak # a comment
              remedy: [Mend it.]
              verify: [Look.]
            shut: { title: Shut, remedy: [Open it.], verify: [Look.], frequency: 1.5 }
          symptoms:
            warm:
              title: It is warm
              rules:
                far: { when: { room: above 0 }, conclude: shut, because: It is warm. }
                near: { when: { room: at most 0 }, conclude: leak, because: It is not. }
            weak:
              title: It is weak
              rules:
                low: { when: { pressure: below 2 }, conclude: dirty, because: It is low. }
                right: { when: { pressure: 2 to 6 }, conclude: leak, because: It is right. }
                high: { when: { pressure: above 6 }, escalate: hotline, because: It is high. }
          """);
  static final Sources SOURCES = new Sources(List.of(FILE));
  public static final KnowledgeBase KB = Resolver.resolve(SOURCES);

  private FieldBase() {}

  /** Runs every row of a table. */
  public static InputRun run(String table, Consumer<FieldCase> each) {
    BufferedReader text = new BufferedReader(new StringReader(table));
    return new FieldRuns(SOURCES).of("jobs.csv", text, ColumnMap.NONE, each);
  }

  /** What comes of a table. */
  public static FieldReport report(String table) {
    FieldBook book = new FieldBook(KB);
    InputRun run = run(table, book::add);
    return book.report(run.counts());
  }

  /** What the rule {@code low} said. */
  static GroundReport low(FieldReport report) {
    return report.symptoms().get(0).grounds().stream()
        .filter(said -> said.ground().rules().contains("low"))
        .findFirst()
        .orElseThrow();
  }
}
