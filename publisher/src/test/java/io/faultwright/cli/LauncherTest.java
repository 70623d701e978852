package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launcher with a Maven and a Java that only write down what they were asked. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the launcher for Windows is another script")
class LauncherTest {
  @TempDir Path temp;

  private Path home;
  private Path tools;
  private Path java;

  private record Result(int code, String out, String err) {}

  @BeforeEach
  void writeTree() throws IOException {
    home = Files.createDirectories(temp.resolve("a folder with spaces/it's \"here\""));
    Files.copy(Path.of("../faultwright"), home.resolve("faultwright"));
    for (String file : List.of("pom.xml", "engine/pom.xml", "publisher/pom.xml")) {
      write(home.resolve(file), "");
    }
    write(home.resolve("engine/src/main/A.java"), "");
    write(home.resolve("publisher/src/main/B.java"), "");
    write(home.resolve("rules/walk-in-freezers/handbook.yaml"), "");
    tools = Files.createDirectories(temp.resolve("tools"));
    offerCommonTools();
    java = temp.resolve("java home");
    writeJava("17.0.15");
    script(
        tools.resolve("mvn"),
        "echo build >>\"" + temp + "/builds\"; sleep 0.2; touch publisher/target/faultwright.jar");
    // The JDK's compiler only has to be there.
    script(java.resolve("bin/javac"), "exit 0");
  }

  /** Nothing else is on the path, so that no real Maven or Java can be found. */
  private void offerCommonTools() throws IOException {
    List<String> common =
        List.of(
            "cat",
            "dirname",
            "find",
            "head",
            "mkdir",
            "mv",
            "readlink",
            "rm",
            "sed",
            "sleep",
            "touch");
    for (String tool : common) {
      String found = Files.exists(Path.of("/bin", tool)) ? "/bin/" : "/usr/bin/";
      script(tools.resolve(tool), "exec " + found + tool + " \"$@\"");
    }
  }

  private void writeJava(String version) throws IOException {
    write(java.resolve("release"), "JAVA_VERSION=\"" + version + "\"\n");
    script(
        java.resolve("bin/java"),
        """
        for argument; do
          case $argument in
            -XX:ArchiveClassesAtExit=*) echo classes >"${argument#*=}"; exit 0 ;;
          esac
        done
        printf '[%s]' "$@"
        exit 7""");
  }

  @Test
  void firstUseBuildsOnceAndStartsWithTheArguments() throws Exception {
    Result first = launch(home.resolve("faultwright"), "check", "a b", "", "*");
    assertEquals(7, first.code());
    assertTrue(first.err().startsWith("Building Faultwright once…\n"), first.err());
    assertTrue(first.out().endsWith("faultwright.jar][check][a b][][*]"), first.out());
    assertTrue(
        first.out().contains("[-XX:SharedArchiveFile=" + real("publisher/target/classes-17.0.15")),
        first.out());
    Result second = launch(home.resolve("faultwright"), "check");
    assertEquals("", second.err());
    assertEquals(1, builds());
  }

  @Test
  void linkFromAnywhereStartsTheSame() throws Exception {
    Path link = Files.createSymbolicLink(temp.resolve("fw"), home.resolve("faultwright"));
    Path relative = Files.createSymbolicLink(temp.resolve("fw2"), Path.of("fw"));
    assertEquals(7, launch(link).code());
    assertEquals(7, launch(relative).code());
    assertEquals(1, builds());
  }

  @Test
  void newerSourceIsBuiltAgain() throws Exception {
    launch(home.resolve("faultwright"));
    Files.setLastModifiedTime(
        home.resolve("engine/src/main/A.java"), FileTime.from(Instant.now().plusSeconds(5)));
    assertTrue(launch(home.resolve("faultwright")).err().contains("Building"));
    assertEquals(2, builds());
  }

  @Test
  void usersAtTheSameTimeShareOneBuild() throws Exception {
    List<Process> processes = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      processes.add(start(home.resolve("faultwright")));
    }
    for (Process process : processes) {
      assertTrue(process.waitFor(60, TimeUnit.SECONDS));
      assertEquals(7, process.exitValue());
    }
    assertEquals(1, builds());
  }

  @Test
  void lockOfAProcessThatIsGoneIsTakenOver() throws Exception {
    Process gone = new ProcessBuilder("true").start();
    gone.waitFor();
    write(home.resolve("target/build.lock/pid"), gone.pid() + "\n");
    assertEquals(7, launch(home.resolve("faultwright")).code());
  }

  @Test
  void failedBuildShowsWhatMavenSaid() throws Exception {
    script(tools.resolve("mvn"), "echo '[ERROR] A.java does not compile'; exit 1");
    Result result = launch(home.resolve("faultwright"));
    assertEquals(3, result.code());
    assertEquals("", result.out());
    assertTrue(result.err().contains("[ERROR] A.java does not compile"), result.err());
    assertTrue(result.err().contains("the build failed"), result.err());
    assertTrue(Files.notExists(home.resolve("target/build.lock")));
  }

  @Test
  void missingMavenIsSaidKindly() throws Exception {
    Files.delete(tools.resolve("mvn"));
    Result result = launch(home.resolve("faultwright"));
    assertEquals(3, result.code());
    assertTrue(result.err().contains("install Maven"), result.err());
  }

  @Test
  void missingJavaIsSaidKindly() throws Exception {
    Files.delete(java.resolve("bin/java"));
    Result result = launch(home.resolve("faultwright"));
    assertEquals(3, result.code());
    assertTrue(result.err().contains("Java is not installed"), result.err());
  }

  @Test
  void oldJavaIsSaidKindly() throws Exception {
    for (String version : List.of("1.8.0_402", "11.0.22", "9")) {
      writeJava(version);
      Result result = launch(home.resolve("faultwright"));
      assertEquals(3, result.code());
      assertTrue(result.err().contains("Java " + version), result.err());
      assertTrue(result.err().contains("install a JDK 17 or newer"), result.err());
    }
  }

  @Test
  void otherJavaGetsAnArchiveOfItsOwn() throws Exception {
    launch(home.resolve("faultwright"));
    writeJava("25.0.1");
    Result result = launch(home.resolve("faultwright"));
    assertTrue(result.out().contains("classes-25.0.1.jsa"), result.out());
    assertTrue(Files.exists(home.resolve("publisher/target/classes-17.0.15.jsa")));
    assertEquals(1, builds());
  }

  private Result launch(Path script, String... args) throws Exception {
    Process process = start(script, args);
    process.getOutputStream().close();
    String out = new String(process.getInputStream().readAllBytes());
    String err = new String(process.getErrorStream().readAllBytes());
    return new Result(process.waitFor(), out, err);
  }

  private Process start(Path script, String... args) throws IOException {
    List<String> command = new ArrayList<>(List.of(script.toString()));
    command.addAll(List.of(args));
    ProcessBuilder builder = new ProcessBuilder(command).directory(temp.toFile());
    builder.environment().put("JAVA_HOME", java.toString());
    builder.environment().put("PATH", tools.toString());
    return builder.start();
  }

  private String real(String path) throws IOException {
    return home.toRealPath().resolve(path).toString();
  }

  private long builds() throws IOException {
    return Files.readAllLines(temp.resolve("builds")).size();
  }

  private static void write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private static void script(Path file, String body) throws IOException {
    write(file, "#!/bin/sh\n" + body + "\n");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }
}
