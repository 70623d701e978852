package io.faultwright.measure;

import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;

/**
 * Times two commands as whole processes, in turn, so that a machine that gets slower slows both.
 * Each command is one argument, its words separated by blanks.
 */
public final class SideBySide {
  private SideBySide() {}

  /** Arguments: how many counted runs, the first command, the second command. */
  public static void main(String[] args) throws IOException, InterruptedException {
    int runs = Integer.parseInt(args[0]);
    double[][] seconds = new double[2][runs];
    for (int run = -1; run < runs; run++) {
      for (int which = 0; which < 2; which++) {
        double taken = seconds(args[which + 1]);
        if (run >= 0) {
          seconds[which][run] = taken;
        }
      }
    }
    double[] ratios = new double[runs];
    Arrays.setAll(ratios, run -> seconds[0][run] / seconds[1][run]);
    print(args[1], seconds[0]);
    print(args[2], seconds[1]);
    print("ratio, pair by pair", ratios);
  }

  private static double seconds(String command) throws IOException, InterruptedException {
    long start = System.nanoTime();
    new ProcessBuilder(command.split(" "))
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start()
        .waitFor();
    return (System.nanoTime() - start) / 1e9;
  }

  private static void print(String what, double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    System.out.printf(
        Locale.ROOT,
        "min %.2f  median %.2f  max %.2f  %s%n",
        sorted[0],
        sorted[sorted.length / 2],
        sorted[sorted.length - 1],
        what.length() > 60 ? what.substring(what.length() - 60) : what);
  }
}
