package io.faultwright.cli;

import io.faultwright.resolve.ColumnMap;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import picocli.CommandLine.Option;

/** The option that names a column map. */
final class ColumnsOption {
  @Option(
      names = "--columns",
      paramLabel = "MAP",
      description = "YAML file that says what the columns of a table mean.")
  private Optional<String> file = Optional.empty();

  boolean isGiven() {
    return file.isPresent();
  }

  /** Reads the map, if there is one, and works with it; prints what keeps it from being read. */
  int with(
      ProblemPrinter printer,
      Function<SourceFile, ColumnMap> read,
      ToIntFunction<Optional<ColumnMap>> work) {
    if (file.isEmpty()) {
      return work.applyAsInt(Optional.empty());
    }
    return printer.guard(
        new Sources(List.of()),
        none -> {
          SourceFile text = InputFile.read(file.get(), InputStream.nullInputStream());
          return printer.guard(
              new Sources(List.of(text)), only -> work.applyAsInt(Optional.of(read.apply(text))));
        });
  }
}
