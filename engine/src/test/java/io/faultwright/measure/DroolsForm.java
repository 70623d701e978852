package io.faultwright.measure;

import com.sun.management.OperatingSystemMXBean;
import io.faultwright.measure.GeneratedRules.Sample;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToIntFunction;

/**
 * Measures each {@link Form} on the same rules: a new process for each figure, the forms in turn,
 * the best of the rounds. Times are processor times of the process, all its threads, compiler and
 * collector included, so that other work on the machine disturbs them little.
 */
public final class DroolsForm {
  private static final int WARM_UP = 20_000;
  private static final int MEASURED = 50_000;

  private DroolsForm() {}

  /** What one process found. */
  private record Figures(Form form, double coldSeconds, double microsACase, long megabytes) {
    static Figures parse(Form form, String line) {
      String[] parts = line.trim().split(" ");
      return new Figures(
          form,
          Double.parseDouble(parts[0]),
          Double.parseDouble(parts[1]),
          Long.parseLong(parts[2]));
    }
  }

  /**
   * Arguments: how many rules and rounds; or, in a process of its own, how many rules and a form.
   */
  public static void main(String[] args) throws IOException {
    int rules = Integer.parseInt(args[0]);
    if (args[1].matches("\\d+")) {
      table(rules, Integer.parseInt(args[1]));
    } else {
      measure(rules, Form.valueOf(args[1]));
    }
  }

  private static void table(int rules, int rounds) throws IOException {
    List<Figures> all = new ArrayList<>();
    for (int round = 0; round < rounds; round++) {
      for (Form form : Form.values()) {
        all.add(Figures.parse(form, process(rules, form)));
      }
    }
    System.out.printf("%d rules, best of %d rounds%n", rules, rounds);
    for (Form form : Form.values()) {
      System.out.printf(
          Locale.ROOT,
          "| %s | %.2f | %.1f | %d |%n",
          form.title(),
          best(all, form, Comparator.comparing(Figures::coldSeconds)).coldSeconds(),
          best(all, form, Comparator.comparing(Figures::microsACase)).microsACase(),
          best(all, form, Comparator.comparing(Figures::megabytes)).megabytes());
    }
  }

  private static Figures best(List<Figures> all, Form form, Comparator<Figures> order) {
    return all.stream().filter(figures -> figures.form() == form).min(order).orElseThrow();
  }

  private static String process(int rules, Form form) throws IOException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx1g",
                "-cp",
                System.getProperty("java.class.path"),
                DroolsForm.class.getName(),
                String.valueOf(rules),
                form.name())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }

  private static void measure(int rules, Form form) {
    GeneratedRules generated = GeneratedRules.of(rules, 1000);
    ToIntFunction<Sample> fire = form.prepare(generated.rules());
    fire.applyAsInt(generated.samples().get(0));
    double cold = processorSeconds();
    check(generated, fire);
    run(generated.samples(), fire, WARM_UP);
    double before = processorSeconds();
    run(generated.samples(), fire, MEASURED);
    double each = (processorSeconds() - before) / MEASURED;
    System.out.printf(Locale.ROOT, "%.3f %.3f %d%n", cold, each * 1e6, usedMegabytes());
  }

  private static void check(GeneratedRules generated, ToIntFunction<Sample> fire) {
    for (Sample sample : generated.samples()) {
      long expected = generated.rules().stream().filter(rule -> rule.firesOn(sample)).count();
      if (fire.applyAsInt(sample) != expected) {
        throw new IllegalStateException("wrong count on " + sample);
      }
    }
  }

  private static void run(List<Sample> samples, ToIntFunction<Sample> fire, int times) {
    for (int i = 0; i < times; i++) {
      fire.applyAsInt(samples.get(i % samples.size()));
    }
  }

  private static double processorSeconds() {
    OperatingSystemMXBean system = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
    return system.getProcessCpuTime() / 1e9;
  }

  private static long usedMegabytes() {
    System.gc();
    return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() >> 20;
  }
}
