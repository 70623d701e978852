package io.faultwright.piece;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import java.util.zip.CRC32;

/** Which program this is: another one, or another Java, may make other files from the same. */
public final class Program {
  private static final String OWN = "faultwright";

  private Program() {}

  /** Looked up when it is first asked for. */
  private static final class Read {
    static final Optional<Fingerprint> FINGERPRINT = read();
  }

  /** Its fingerprint; absent where the program cannot be read. */
  public static Optional<Fingerprint> fingerprint() {
    return Read.FINGERPRINT;
  }

  private static Optional<Fingerprint> read() {
    try {
      List<List<String>> parts = new ArrayList<>();
      for (Path part : parts()) {
        parts.add(Files.isDirectory(part) ? ofFolder(part) : ofJar(part));
      }
      parts.add(List.of(System.getProperty("java.vendor"), System.getProperty("java.vm.version")));
      return Optional.of(new Fingerprints().of(parts));
    } catch (IOException | IllegalArgumentException unreadable) {
      return Optional.empty();
    }
  }

  /** What is on the class path, and what its jars name in turn. */
  private static Set<Path> parts() throws IOException {
    Set<Path> parts = new LinkedHashSet<>();
    String separator = System.getProperty("path.separator");
    for (String entry : System.getProperty("java.class.path").split(separator)) {
      Path part = Path.of(entry).toAbsolutePath().normalize();
      if (Files.exists(part) && parts.add(part) && Files.isRegularFile(part)) {
        parts.addAll(named(part));
      }
    }
    return parts;
  }

  private static List<Path> named(Path jar) throws IOException {
    try (JarFile opened = new JarFile(jar.toFile())) {
      String names =
          Optional.ofNullable(opened.getManifest())
              .map(Manifest::getMainAttributes)
              .map(attributes -> attributes.getValue("Class-Path"))
              .orElse("");
      URI here = jar.toUri();
      return Arrays.stream(names.split(" "))
          .filter(name -> !name.isBlank())
          .map(here::resolve)
          .map(Path::of)
          .filter(Files::exists)
          .toList();
    }
  }

  /** Names and checksums of what is in our own jars; of others, which say their version, less. */
  private static List<String> ofJar(Path jar) throws IOException {
    String name = jar.getFileName().toString();
    if (!name.startsWith(OWN)) {
      return List.of(name, Long.toString(Files.size(jar)));
    }
    try (JarFile opened = new JarFile(jar.toFile())) {
      return opened.stream()
          .filter(entry -> !entry.getName().startsWith("META-INF/"))
          .map(entry -> entry.getName() + " " + entry.getCrc())
          .sorted()
          .toList();
    }
  }

  private static List<String> ofFolder(Path folder) throws IOException {
    List<String> files = new ArrayList<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
        CRC32 checksum = new CRC32();
        checksum.update(Files.readAllBytes(file));
        files.add(folder.relativize(file) + " " + checksum.getValue());
      }
    }
    return files;
  }
}
