package io.faultwright;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Another Java process, to be killed. */
public final class Child {
  private Child() {}

  /** Starts the main method of a class, on all classes of the tests. */
  public static Process start(Class<?> main, String... arguments) throws IOException {
    String tested = System.getProperty("surefire.test.class.path");
    return start(tested == null ? System.getProperty("java.class.path") : tested, main, arguments);
  }

  /** Starts the main method of a class that needs no library, which takes less time. */
  public static Process start(Class<?> main, Class<?> used, String... arguments)
      throws IOException {
    String classes =
        Stream.of(main, used)
            .map(type -> folder(type).toString())
            .collect(Collectors.joining(File.pathSeparator));
    return start(classes, main, arguments);
  }

  private static Path folder(Class<?> type) {
    try {
      return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException impossible) {
      throw new AssertionError(impossible);
    }
  }

  private static Process start(String classes, Class<?> main, String... arguments)
      throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto"));
    command.addAll(List.of("-cp", classes, main.getName()));
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }
}
