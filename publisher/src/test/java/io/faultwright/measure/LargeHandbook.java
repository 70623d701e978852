package io.faultwright.measure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Makes a large handbook from a seed, always the same: symptoms with readings, limits, faults and
 * cases of their own and readings that they share, for models of four families.
 */
public final class LargeHandbook {
  static final int GUIDES = 20;
  private static final int SHARED = 30;
  private static final long SEED = 20260302;

  private LargeHandbook() {}

  /** Arguments: a folder, how many symptoms, how many models. */
  public static void main(String[] args) throws IOException {
    write(Path.of(args[0]), files(Integer.parseInt(args[1]), Integer.parseInt(args[2])));
  }

  /** Writes files into a folder. */
  public static void write(Path folder, Map<String, String> files) throws IOException {
    for (Map.Entry<String, String> file : files.entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue());
    }
  }

  /** The texts by file name. */
  public static SortedMap<String, String> files(int symptoms, int models) {
    SortedMap<String, String> files = new TreeMap<>();
    List<LargeReading> shared = shared();
    files.put("handbook.yaml", LargeEquipment.handbook(models));
    files.put("shared.yaml", shared(shared, symptoms));
    for (int number = 0; number < symptoms; number++) {
      files.put(
          "symptoms/" + LargeSymptom.id(number) + ".yaml",
          new LargeSymptom(number, models, shared, SEED).yaml());
    }
    files.put("guides/welcome.md", "# Welcome\n\nBegin with [the first guide](guide-00.md).\n");
    for (int guide = 0; guide < GUIDES; guide++) {
      files.put("guides/guide-%02d.md".formatted(guide), guide(guide));
    }
    return files;
  }

  private static List<LargeReading> shared() {
    Random random = new Random(SEED);
    List<LargeReading> shared = new ArrayList<>();
    for (int i = 0; i < SHARED; i++) {
      String id = "shared-%02d".formatted(i);
      String subject = "Shared reading " + i;
      shared.add(
          switch (i % 3) {
            case 0 -> LargeReading.choice(id, subject, random);
            case 1 -> LargeReading.amount(id, subject, random);
            default -> LargeReading.judged(id, subject, random);
          });
    }
    return shared;
  }

  private static String shared(List<LargeReading> shared, int symptoms) {
    StringBuilder text = new StringBuilder("readings:\n").append(complaint(symptoms));
    shared.forEach(reading -> text.append(reading.yaml()));
    text.append("limits:\n");
    for (int i = 2; i < SHARED; i += 3) {
      text.append(LargeEquipment.byFamily(shared.get(i).id(), 5 + i % 4));
    }
    return text.append(never(symptoms)).toString();
  }

  private static String never(int symptoms) {
    String complaints =
        IntStream.range(0, symptoms)
            .filter(LargeSymptom::needsHotGas)
            .mapToObj(LargeSymptom::id)
            .collect(Collectors.joining(", "));
    return complaints.isEmpty()
        ? ""
        : """
        never:
          only-with-hot-gas:
            when: { defrost: electric, complaint: [%s] }
            because: What complains belongs to the hot gas.
        """
            .formatted(complaints);
  }

  private static String complaint(int symptoms) {
    StringBuilder text =
        new StringBuilder(
            """
              ambient-temperature:
                title: Ambient temperature
                ask: What is the temperature of the air that enters the condenser?
                unit: °C
                range: -20 to 45
                minutes: 1
              supply:
                title: Supply
                ask: How is the supply?
                values: [right, wrong]
                access: live-voltage
                minutes: 2
              complaint:
                ask: What does the customer complain about?
                normal: nothing
                values:
                  nothing: Nothing
            """);
    for (int number = 0; number < symptoms; number++) {
      text.append("      %s: Complaint %d%n".formatted(LargeSymptom.id(number), number));
    }
    return text.toString();
  }

  private static String guide(int number) {
    return """
        # Guide number %1$d

        What every person should know before work of kind %1$d.

        ## Before

        1. Read [the ambient](reading:ambient-temperature).
        2. Isolate, lock out, prove dead.

        | Tool | For |
        |------|-----|
        | Gauge | pressure %1$d |
        | Meter | current |

        ## After

        Close everything, and see [the welcome](welcome.md).
        """
        .formatted(number);
  }
}
