package io.faultwright.logbook;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.operation.Program;
import io.faultwright.resolve.LogMap;
import java.io.BufferedReader;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A log of either kind: with a map of columns it is a table, without one it is typed. */
public final class LogFile {
  private LogFile() {}

  /**
   * Begins to read a log.
   *
   * @param path what to call it in messages
   * @throws Unreadable where its beginning makes no sense
   */
  public static LogInput open(
      String path, BufferedReader in, Optional<LogMap> map, Program program) {
    if (map.isPresent()) {
      return new TableLog(path, in, map.get(), program);
    }
    if (path.toLowerCase(Locale.ROOT).endsWith(".csv")) {
      throw new Unreadable(
          List.of(
              new Problem(
                  List.of(),
                  "`" + path + "` is a table, and nothing says what its columns mean",
                  "add `--columns MAP`, a YAML file with `time:` and `columns:`")));
    }
    return new TypedLog(path, in, program);
  }
}
