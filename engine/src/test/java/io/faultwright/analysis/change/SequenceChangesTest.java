package io.faultwright.analysis.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.change.Edit;
import io.faultwright.change.SequenceChange;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A sequence of operation, changed in one place, and what is told of it on which machines. */
class SequenceChangesTest {
  /** Without its cases, of which one needs the sequence on each machine. */
  private static final List<SourceFile> FILES =
      FolderReader.read(Path.of("src/test/resources/sequences/heating-cycle")).files().stream()
          .map(file -> SourceFile.of(file.path(), file.text().replaceAll("(?s)\ncases:.*", "\n")))
          .toList();

  private static KnowledgeBase read(List<SourceFile> files) {
    return Resolver.resolve(new Sources(files));
  }

  /** In pairs: what was written, and what is written in its place. */
  private static KnowledgeBase with(String... turns) {
    return read(
        FILES.stream()
            .map(
                file -> {
                  String text = file.text();
                  for (int i = 0; i < turns.length; i += 2) {
                    text = text.replace(turns[i], turns[i + 1]);
                  }
                  return SourceFile.of(file.path(), text);
                })
            .toList());
  }

  private static List<String> told(KnowledgeBase before, KnowledgeBase after) {
    return SequenceChanges.between(before, after).stream().map(SequenceChangesTest::line).toList();
  }

  private static String line(SequenceChange change) {
    return change.edit().field()
        + " "
        + change.builds().stream().map(Object::toString).collect(Collectors.joining(", ", "[", "]"))
        + ": "
        + change.before().map(Edit.Passage::text).orElse("-").replace("\n", " | ")
        + " => "
        + change.after().map(Edit.Passage::text).orElse("-").replace("\n", " | ");
  }

  /** What is told of a change, courses left out. */
  private static void changed(String expected, String... turns) {
    KnowledgeBase after = with(turns);
    List<String> told =
        told(read(FILES), after).stream().filter(line -> !line.startsWith("course ")).toList();
    assertEquals(List.of(expected), told);
  }

  @Test
  void aTimeIsToldOnTheMachinesOnWhichItChangedAndNotInThePhasesThatItEnds() {
    changed(
        "time heating-limit [MO-1 with software 2.9]: 3 min => 4 min",
        "{ software: below 2.10 }, lasts: 3 min",
        "{ software: below 2.10 }, lasts: 4 min");
    changed(
        "time restart-delay [MO-2 with software 3.0]: 2 min => 1 min 30 s",
        "{ controller: k2 }, lasts: 2 min",
        "{ controller: k2 }, lasts: 90 s");
  }

  @Test
  void otherWordsForTheSameAreNoChange() {
    KnowledgeBase before = read(FILES);
    assertEquals(
        List.of(),
        told(
            before,
            with(
                "{ applies: { software: at least 2.10 }, lasts: 6 min }",
                "{ applies: { software: 2.10 }, lasts: 360 s }\n"
                    + "          - { applies: { controller: k2 }, lasts: 6 min }")));
    assertEquals(
        List.of(),
        told(before, with("{ after: drain-time, go: heating }", "{ after: 60 s, go: heating }")));
    assertEquals(
        List.of(),
        told(
            before,
            with(
                "          - { when: call is none, go: standby }\n"
                    + "          - { after: 10 min, go: draining, ahead-of: standby }\n",
                "          - { after: 10 min, go: draining, ahead-of: standby }\n"
                    + "          - { when: call is none, go: standby }\n")));
  }

  private static final String ALL =
      "[MO-1 with software 2.9, MO-1 with software 2.10, MO-2 with software 3.0]";

  @Test
  void partsOfAPhase() {
    changed("display of draining " + ALL + ": DRAN => PUMP", "display: DRAN", "display: PUMP");
    changed(
        "on in building " + ALL + ": compressor => compressor | pump",
        "on: [compressor]",
        "on: [compressor, pump]");
    changed(
        "on in draining [MO-2 with software 3.0]: drain-valve until 40 s | pump => drain-valve until 40 s",
        "on: [pump, drain-valve until drain-together]",
        "on: [{ output: pump, applies: { controller: k1 } }, drain-valve until drain-together]");
    changed(
        "next of restart-delay "
            + ALL
            + ": after 4 min → standby | after 2 min → standby"
            + " => after 4 min → draining | after 2 min → draining",
        "{ after: restart-delay, go: standby }",
        "{ after: restart-delay, go: draining }");
    changed(
        "stop of full-stop " + ALL + ": yes => no",
        "display: FULL\n        stop: yes",
        "display: FULL");
  }

  @Test
  void whatIsOfNoPhase() {
    changed(
        "limit of long-heats " + ALL + ": 3 times, then long-stop => 4 times, then long-stop",
        "limit: 3",
        "limit: 4");
    changed(
        "start " + ALL + ": standby => restart-delay", "start: standby", "start: restart-delay");
    changed(
        "never-together "
            + ALL
            + ": compressor + drain-valve | compressor + heater => compressor + heater",
        "      - [drain-valve, compressor]\n",
        "");
    changed(
        "set of drain-time " + ALL + ":  => 10 s to 2 min",
        "title: Draining, lasts: 60 s",
        "title: Draining, lasts: 60 s, set: 10 to 120 s");
  }

  @Test
  void phasesThatComeAndGo() {
    List<String> told =
        told(
            read(FILES),
            with(
                "{ after: drain-time, go: heating }",
                "{ after: drain-time, go: soaking }",
                "      heating:\n        title: Heating\n",
                "      soaking: { display: SOAK, next: [{ after: 5 s, go: heating }] }\n"
                    + "      heating:\n        title: Heating\n"));
    assertTrue(told.contains("phase soaking " + ALL + ": - => soaking"), told.toString());
    assertTrue(
        told.contains(
            "next of draining " + ALL + ": after 1 min → heating => after 1 min → soaking"),
        told.toString());
    assertTrue(told.stream().noneMatch(line -> line.startsWith("display of soaking")));
  }

  /** The display in a course is what a technician compares; it tells also where events changed. */
  @Test
  void coursesInWhichTheDisplayIsAnother() {
    assertEquals(
        List.of(
            "time heating-limit [MO-1 with software 2.9]: 3 min => 4 min",
            "course stuck-closed [MO-1 with software 2.9]: 0:00 REDY | 0:10 DRAN | 1:10 HEAT"
                + " | 4:10 COOL | 14:10 DRAN | 15:10 HEAT | 18:10 COOL | 28:10 DRAN | 29:10 HEAT"
                + " | 32:10 LONG => 0:00 REDY | 0:10 DRAN | 1:10 HEAT | 5:10 COOL | 15:10 DRAN"
                + " | 16:10 HEAT | 20:10 COOL | 30:10 DRAN | 31:10 HEAT | 35:10 LONG"),
        told(
            read(FILES),
            with(
                "{ software: below 2.10 }, lasts: 3 min",
                "{ software: below 2.10 }, lasts: 4 min")));
    assertEquals(
        List.of("course good " + ALL),
        told(read(FILES), with("opens 80 s into heating", "opens 90 s into heating")).stream()
            .map(line -> line.substring(0, line.indexOf(':')))
            .toList());
  }

  @Test
  void whoWorksByIt() {
    String title = "    title: Heating cycle\n";
    KnowledgeBase old = with(title, title + "    applies: { controller: k1 }\n");
    assertEquals(List.of("applies [MO-2 with software 3.0]: no => yes"), told(old, read(FILES)));
    KnowledgeBase without =
        read(FILES.stream().filter(file -> !file.path().equals("sequence.yaml")).toList());
    assertEquals(List.of(" " + ALL + ": - => Heating cycle"), told(without, read(FILES)));
    assertEquals(List.of(" " + ALL + ": Heating cycle => -"), told(read(FILES), without));
  }

  /** What is told is written differently too, and only once. */
  @Test
  void editsNameTheSameParts() {
    KnowledgeBase after = with("display: DRAN", "display: PUMP", "title: Standby", "title: Idle");
    assertEquals(
        List.of(
            "text titles of parts",
            "work course good",
            "work course nothing-released",
            "work course stuck-closed",
            "work display of draining"),
        Edits.between(read(FILES), after).stream()
            .map(edit -> edit.concern().word() + " " + edit.field())
            .sorted()
            .toList());
  }
}
