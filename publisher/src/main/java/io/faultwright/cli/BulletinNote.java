package io.faultwright.cli;

import io.faultwright.page.Bulletin;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option that says why something changed. */
final class BulletinNote {
  @Option(
      names = "--note",
      paramLabel = "TEXT",
      description = "Why something changed, for the bulletin. Several times: a paragraph each.")
  private List<String> reasons = List.of();

  List<String> reasons() {
    return reasons.stream().map(String::strip).filter(reason -> !reason.isEmpty()).toList();
  }

  /** People follow a change whose reason they know. */
  void warn(Console console, Optional<Bulletin> bulletin) {
    if (bulletin.isPresent() && reasons().isEmpty()) {
      console.say("warning: the bulletin does not say why; give the reason with `--note`\n");
    }
  }
}
