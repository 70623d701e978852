package io.faultwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.diagnostic.Unreadable;
import io.faultwright.report.Ink;
import io.faultwright.report.ProblemText;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.dhatim.fastexcel.Workbook;

/** A small machine, and tables of limits for it in a file of their own. */
final class Sample {
  static final boolean BLESS = Boolean.getBoolean("bless") && !"true".equals(System.getenv("CI"));
  static final Path RESOURCES = Path.of("src", "test", "resources", "sheets");

  /** The file that the tables stand in. */
  static final String LIMITS = "limits.yaml";

  private static final String MACHINE =
      """
      handbook:
        { title: Small, maker: Brantmoor Cold, revision: "1", date: 2026-03-02, language: en,
          disclaimer: Made up. }
      equipment:
        families: { fell: { title: Fell }, tarn: { title: Tarn }, scar: { title: Scar } }
        options:
          control:
            title: Control
            values:
              k1: { title: K1, software: [1.4, 2.1, 2.9, 2.10] }
              k2: { title: K2, software: [3.0] }
          doors: { title: Doors, values: { one: One door, "2": Two doors } }
        models:
          FL-1: { family: fell, options: { control: k1, doors: one } }
          TN-1: { family: tarn, options: { control: k2, doors: "2" } }
          SC-1: { family: scar, options: { control: k1, doors: one } }
      readings:
        ambient: { ask: "How warm is the air?", unit: °C, range: -30 to 50 }
        discharge-pressure: { ask: "Which pressure?", unit: bar(g), range: -1 to 40 }
        superheat: { ask: "Which superheat?", unit: K, range: 0 to 40 }
        delay: { ask: "How long?", unit: min, range: 0 to 500 }
        opening: { ask: "How far open?", unit: "%", range: 0 to 100 }
        starts-in-the-hour-after-the-defrost: { ask: "How often?", unit: times, range: 0 to 60 }
      """;

  static final String TABLES =
      """
      # invented figures
      limits:
        discharge-pressure:
          by: [family, ambient]
          between: interpolate
          rows:
            # the fans switch with the pressure
            - { family: fell, ambient: -20 °C, low: 5.0, high: 7.5 }
            - { family: fell, ambient: 45 °C, low: 17.5, high: 20.5 } # measured twice

            # all others
            - { family: [tarn, scar], ambient: -20 °C, low: 72.5 psi(g), high: 0.98 MPa(g) }
            - { family: not fell, ambient: 45 °C, high: 28.0 }
        delay:
          by: [control, software]
          rows:
            - { control: k1, software: 2.10, low: 1.25 }
            - { software: below 2.10, high: 6 }
            - { software: at least 3.0, low: 90 s, high: 8 }
        superheat:
          by: ambient
          between: step
          rows:
            - { ambient: -20 to 10 °C, low: 4, high: 8 }
            - ambient: 10 to 45
              # two lines for one row
              low: 5
              high: 10
        opening:
          by: [doors]
          rows: [{ doors: one, high: 70 }, { doors: "2", low: 12.5, high: 80 }]
        starts-in-the-hour-after-the-defrost:
          rows:
            - high: 6
      # the end
      """;

  private Sample() {}

  /** The machine with these tables. */
  static Sources sources(String limits) {
    return new Sources(
        List.of(SourceFile.of("handbook.yaml", MACHINE), SourceFile.of(LIMITS, limits)));
  }

  /** What an import makes of these tables. */
  static Imported read(String limits, SheetFile file, Collection<String> readings) {
    return new LimitsImport(sources(limits), path -> limits).read(file, readings);
  }

  static Imported readCsv(String limits, String reading, String csv) {
    return read(limits, csv(csv), List.of(reading));
  }

  /** The tables after an import that must leave a knowledge base that can be read. */
  static String after(String limits, String reading, String csv) {
    Imported imported = readCsv(limits, reading, csv);
    Resolver.resolve(imported.after());
    return imported.files().getOrDefault(LIMITS, limits);
  }

  static SheetFile csv(String text) {
    return SheetFile.read("sheet.csv", text.getBytes(StandardCharsets.UTF_8), SheetFormat.CSV);
  }

  /** A workbook that somebody else made. */
  static byte[] workbook(Consumer<Workbook> content) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(out, "Somebody", "1.0")) {
      content.accept(workbook);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  static SheetFile xlsx(byte[] content) {
    return SheetFile.read("book.xlsx", content, SheetFormat.XLSX);
  }

  /** What a person sees where the import is refused; empty where it is not. */
  static String refusal(Runnable work, Sources sources) {
    try {
      work.run();
      return "";
    } catch (Unreadable unreadable) {
      return new ProblemText(sources, Ink.PLAIN).write(unreadable.problems());
    }
  }

  /** The files of a folder of the demo, by path. */
  static SortedMap<String, String> texts(Path folder) {
    SortedMap<String, String> texts = new TreeMap<>();
    try (var files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String path = folder.relativize(file).toString().replace('\\', '/');
        if (path.endsWith(".yaml") || path.endsWith(".md")) {
          texts.put(path, Files.readString(file));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return texts;
  }

  /** Compares bytes with the stored ones. */
  static void check(Path file, byte[] actual) {
    try {
      if (BLESS) {
        Files.write(file, actual);
      }
      String stored = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
      assertEquals(
          stored, new String(actual, StandardCharsets.ISO_8859_1), () -> file + " differs");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
