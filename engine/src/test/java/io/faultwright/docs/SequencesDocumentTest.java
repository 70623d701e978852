package io.faultwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.logbook.LogFile;
import io.faultwright.logbook.LogInput;
import io.faultwright.logbook.Logs;
import io.faultwright.model.Sequence;
import io.faultwright.operation.HeatingCycle;
import io.faultwright.operation.Program;
import io.faultwright.report.FollowText;
import io.faultwright.report.Ink;
import io.faultwright.resolve.LogMap;
import java.io.BufferedReader;
import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Every log on the page on sequences is followed, and comes out as the page says. */
class SequencesDocumentTest {
  private static final Program PROGRAM = HeatingCycle.on("2.9");

  private final MarkdownPage page = MarkdownPage.read(Stored.DOCS.resolve("sequences.md"));

  @Test
  void logsComeOutAsThePageSays() {
    Map<Fence, String> said = new LinkedHashMap<>();
    Optional<Fence> log = Optional.empty();
    Optional<LogMap> map = Optional.empty();
    for (Fence fence : page.fences()) {
      if (fence.says("log")) {
        log = Optional.of(fence);
        map = Optional.empty();
      } else if (fence.says("columns")) {
        map = Optional.of(Logs.map(fence.body()));
      } else if (fence.says("followed")) {
        said.put(fence, followed(log.orElseThrow().body(), map));
      }
    }
    assertTrue(said.size() >= 4);
    if (Boolean.getBoolean("bless") && !"true".equals(System.getenv("CI"))) {
      page.rewrite(said);
      return;
    }
    said.forEach((fence, text) -> assertEquals(text, fence.body()));
  }

  private static String followed(String log, Optional<LogMap> map) {
    LogInput input =
        LogFile.open(
            map.isPresent() ? "heating.csv" : "heating.log",
            new BufferedReader(new StringReader(log)),
            map,
            PROGRAM);
    return new FollowText(HeatingCycle.BASE, PROGRAM, Ink.PLAIN)
        .write(Logs.follow(input, PROGRAM, 1, 0));
  }

  /** The lists of keys are private to the package that reads them. */
  @Test
  void namesEveryKeyOfAMap() throws ReflectiveOperationException {
    String prose = String.join("\n", page.lines());
    assertEquals(
        List.of(),
        RuleLanguageDocumentTest.keys("LogMap").stream()
            .filter(word -> !prose.contains(word))
            .toList());
  }

  @Test
  void theSequenceIsTheOneThePageNames() {
    Sequence sequence = HeatingCycle.SEQUENCE;
    assertTrue(String.join("\n", page.prose()).contains("sequences/" + sequence.id()));
  }
}
