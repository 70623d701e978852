package io.faultwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.pipeline.Checked;
import io.faultwright.report.CheckJunit;
import io.faultwright.report.CheckSarif;
import io.faultwright.report.Surroundings;
import io.faultwright.report.Validity;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** One knowledge base in which everything is wrong that the tool can find. */
class EveryKindAtOnceTest {
  private static final Path FOLDER = Stored.RESOURCES.resolve("specimens");

  private final Tool tool = new Tool(FolderReader.read(FOLDER));

  @Test
  void everyKindOccurs() {
    assertEquals(
        EnumSet.allOf(FindingKind.class),
        tool.checked().report().findings().stream()
            .map(Finding::kind)
            .collect(Collectors.toCollection(() -> EnumSet.noneOf(FindingKind.class))));
  }

  @Test
  void reportIsAsStored() {
    Stored.check(FOLDER.resolve("expected.txt"), tool.check());
  }

  @Test
  void formatsOfForgesAreValid() {
    String log =
        new CheckSarif(Surroundings.NONE)
            .write(tool.checked().knowledge(), tool.checked().report());
    assertEquals(List.of(), Validity.sarif(log));
    String tests =
        new CheckJunit(Surroundings.NONE, true, true)
            .write(tool.checked().knowledge(), FolderReader.read(FOLDER), tool.checked().report());
    assertEquals(Optional.empty(), Validity.junit(tests));
  }

  /** The comments in the files say where each kind is to be found. */
  @Test
  void filesNameEveryKind() {
    String text =
        FolderReader.read(FOLDER).files().stream()
            .map(file -> file.text())
            .collect(Collectors.joining());
    for (FindingKind kind : FindingKind.values()) {
      assertTrue(text.contains(kind.slug()), kind.slug());
    }
  }

  @Test
  void checkingTwiceGivesTheSameFindings() {
    Checked first = tool.checked();
    assertEquals(first.report(), new Tool(FolderReader.read(FOLDER)).checked().report());
  }
}
