package io.faultwright.measure;

import io.faultwright.compile.RuleCompiler;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.run.Runner;
import java.lang.management.ManagementFactory;

/** A new process that runs 120 cases through 90 rules, dealt to as many symptoms as asked. */
public final class StartUp {
  private StartUp() {}

  /** Prints milliseconds: JVM start to main, knowledge base built, all cases run. */
  public static void main(String[] args) {
    int symptoms = Integer.parseInt(args[0]);
    long main = sinceStart();
    GeneratedRules generated = GeneratedRules.of(90, 120);
    KnowledgeBase base = GeneratedBase.of(generated, symptoms);
    long built = sinceStart();
    Runner runner = new Runner(base, RuleCompiler.compile(base));
    int answers = 0;
    for (int i = 0; i < generated.samples().size(); i++) {
      var situation = GeneratedBase.situationOf(generated.samples().get(i));
      answers += runner.run("symptom-" + i % symptoms, situation).answers().size();
    }
    System.out.printf("%d %d %d (%d answers)%n", main, built, sinceStart(), answers);
  }

  private static long sinceStart() {
    return System.currentTimeMillis() - ManagementFactory.getRuntimeMXBean().getStartTime();
  }
}
