package io.faultwright.measure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;

/** Writes generated knowledge bases to a folder. */
public final class WriteBases {
  private static final long SEED = 20260302;

  private WriteBases() {}

  /**
   * Arguments: a folder and what to write there.
   *
   * <pre>
   * FOLDER partition RULES COLUMNS [WITHOUT WIDENED]
   * FOLDER wide RULES CONDITIONS COLUMNS VALUES
   * FOLDER book SYMPTOMS RULES-EACH [cases]
   * </pre>
   */
  public static void main(String[] args) throws IOException {
    write(Path.of(args[0]), files(args));
  }

  private static SortedMap<String, String> files(String[] args) {
    return switch (args[1]) {
      case "partition" -> TableBase.files(partition(args));
      case "wide" ->
          TableBase.files(
              WideTable.of(
                  Columns.choices(number(args, 4), number(args, 5)),
                  number(args, 2),
                  number(args, 3),
                  SEED));
      case "book" -> book(args);
      default -> throw new IllegalArgumentException("partition, wide or book, not " + args[1]);
    };
  }

  private static Table partition(String[] args) {
    int rules = number(args, 2);
    Table clean = PartitionTable.of(Columns.mixed(number(args, 3)), rules, rules, SEED);
    if (args.length == 4) {
      return clean;
    }
    Defects defects = new Defects(SEED);
    return defects.widened(defects.without(clean, number(args, 4)), number(args, 5));
  }

  private static SortedMap<String, String> book(String[] args) {
    Book book = Book.of(number(args, 2), number(args, 3), SEED);
    SortedMap<String, String> files = book.files();
    if (args.length > 4) {
      files.put("cases.yaml", book.cases());
    }
    return files;
  }

  private static int number(String[] args, int at) {
    return Integer.parseInt(args[at]);
  }

  private static void write(Path folder, Map<String, String> files) throws IOException {
    long characters = 0;
    for (Map.Entry<String, String> file : files.entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue());
      characters += file.getValue().length();
    }
    System.out.println(files.size() + " files, " + characters + " characters");
  }
}
