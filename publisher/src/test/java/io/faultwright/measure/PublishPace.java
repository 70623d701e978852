package io.faultwright.measure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;

/**
 * Times publishing a generated handbook into a new folder, and again over it after one rule has
 * changed, each as a new process.
 *
 * <p>Arguments: an empty folder to work in, how many symptoms, how many models, and the command
 * that starts Faultwright, such as {@code ./faultwright}.
 */
public final class PublishPace {
  private PublishPace() {}

  public static void main(String[] args) throws IOException, InterruptedException {
    Path folder = Path.of(args[0]);
    int symptoms = Integer.parseInt(args[1]);
    SortedMap<String, String> files = LargeHandbook.files(symptoms, Integer.parseInt(args[2]));
    Path kb = folder.resolve("kb");
    LargeHandbook.write(kb, files);
    List<String> command = new ArrayList<>(List.of(args).subList(3, args.length));
    command.addAll(List.of("publish", kb.toString(), "--to", folder.resolve("site").toString()));
    double full = seconds(command);
    Path changed = kb.resolve("symptoms/" + LargeSymptom.id(symptoms / 2) + ".yaml");
    String rules = Files.readString(changed);
    Files.writeString(changed, rules.replaceFirst("conclude: [a-z0-9-]*", "escalate: hotline"));
    double again = seconds(command);
    System.out.printf(
        Locale.ROOT,
        "%d symptoms: %.2f s, again after one rule %.2f s, ratio %.1f %%%n",
        symptoms,
        full,
        again,
        100 * again / full);
  }

  private static double seconds(List<String> command) throws IOException, InterruptedException {
    long start = System.nanoTime();
    int exit = new ProcessBuilder(command).inheritIO().start().waitFor();
    if (exit != 0) {
      throw new IllegalStateException("ended with " + exit);
    }
    return (System.nanoTime() - start) / 1e9;
  }
}
