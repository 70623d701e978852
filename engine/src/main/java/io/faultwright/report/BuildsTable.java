package io.faultwright.report;

import io.faultwright.adequacy.Measured;
import io.faultwright.adequacy.Tally;
import io.faultwright.model.Build;
import io.faultwright.model.Version;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What is shown on each model with each software version, in per cent. */
final class BuildsTable {
  private static final String UNPUBLISHED = "";
  private static final String NOTHING = "-";

  private final Ink ink;

  BuildsTable(Ink ink) {
    this.ink = ink;
  }

  /** A line for each model, a column for each version; nothing where builds are not told apart. */
  String of(Measured measured) {
    if (measured.builds().stream().allMatch(build -> measured.on(build).of() == 0)) {
      return "";
    }
    Map<String, Map<Optional<Version>, String>> models = new LinkedHashMap<>();
    measured
        .builds()
        .forEach(
            build ->
                models
                    .computeIfAbsent(build.model().id(), id -> new LinkedHashMap<>())
                    .put(build.software(), percent(measured.on(build))));
    return ink.strong("By model and software, in per cent")
        + "\n\n"
        + rows(versions(measured.builds()), models)
        + "\n";
  }

  /** None at all first, then the oldest. */
  private static List<Optional<Version>> versions(List<Build> builds) {
    Stream<Optional<Version>> none =
        builds.stream().map(Build::software).filter(Optional::isEmpty).limit(1);
    Stream<Version> some = builds.stream().flatMap(build -> build.software().stream());
    return Stream.concat(none, some.distinct().sorted().map(Optional::of)).toList();
  }

  private static String rows(
      List<Optional<Version>> versions, Map<String, Map<Optional<Version>, String>> models) {
    AlignedRows rows = new AlignedRows();
    rows.add(row("", versions.stream().map(BuildsTable::heading)));
    models.forEach(
        (model, own) ->
            rows.add(row(model, versions.stream().map(one -> own.getOrDefault(one, UNPUBLISHED)))));
    return rows.text();
  }

  private static List<String> row(String head, Stream<String> cells) {
    return Stream.concat(Stream.of(head), cells).toList();
  }

  private static String heading(Optional<Version> version) {
    return version.map(Version::text).orElse("no software");
  }

  private static String percent(Tally tally) {
    return tally.of() == 0 ? NOTHING : Integer.toString(tally.percent());
  }
}
