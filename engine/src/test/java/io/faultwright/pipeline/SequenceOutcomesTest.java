package io.faultwright.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.diagnostic.Unreadable;
import io.faultwright.finding.Finding;
import io.faultwright.finding.FindingKind;
import io.faultwright.model.Value;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Outcomes of a sequence are readings like others: proofs, cases and logs cover them. */
class SequenceOutcomesTest {
  private static final Path FOLDER =
      Path.of("src", "test", "resources", "sequences", "heating-cycle");

  private static Checked check(UnaryOperator<String> change) {
    List<SourceFile> files =
        FolderReader.read(FOLDER).files().stream()
            .map(file -> SourceFile.of(file.path(), change.apply(file.text())))
            .toList();
    return new Pipeline(Scope.ALL, Watch.NOBODY).check(new Sources(files));
  }

  private static Checked without(String text) {
    return with(text, "");
  }

  private static Checked with(String text, String other) {
    boolean[] found = {false};
    Checked checked =
        check(
            file -> {
              found[0] |= file.contains(text);
              return file.replace(text, other);
            });
    assertTrue(found[0], text);
    return checked;
  }

  private static List<FindingKind> kinds(Checked checked) {
    return checked.report().findings().stream().map(Finding::kind).distinct().toList();
  }

  @Test
  void asItIsNothingIsWrong() {
    Checked checked = check(text -> text);
    assertEquals(List.of(), checked.report().findings());
    assertEquals(5, checked.report().casesPassed());
  }

  @Test
  void aLogTellsWhatTheReadingsWouldHave() {
    var given = check(text -> text).knowledge().cases().get("false-stop-from-a-log").given();
    assertEquals(new Value.Word("full-stop"), given.readings().get("stop-shown"));
    assertEquals(new Value.Number(BigFraction.of(88, 60)), given.readings().get("heating-minutes"));
    var three = check(text -> text).knowledge().cases().get("three-in-a-row-from-a-log").given();
    assertEquals(new Value.Word("long-stop"), three.readings().get("stop-shown"));
    assertEquals(new Value.Number(BigFraction.of(3)), three.readings().get("long-heats-in-row"));
  }

  @Test
  void aStopThatNoRuleAnswersIsAGap() {
    Checked checked =
        without(
            "      full-and-false:\n"
                + "        when: { stop-shown: full-stop, store-full: no }\n"
                + "        conclude: nothing-releases\n"
                + "        because: The switch was held open for longer than its window, although"
                + " nothing was released.\n");
    Finding gap =
        checked.report().findings().stream()
            .filter(finding -> finding.kind() == FindingKind.GAP)
            .findFirst()
            .orElseThrow();
    assertTrue(gap.replayed());
    assertEquals(
        new Value.Word("full-stop"), gap.witness().orElseThrow().readings().get("stop-shown"));
  }

  @Test
  void twoAnswersToOneStopAreAContradiction() {
    Checked checked =
        with("when: { stop-shown: full-stop, store-full: yes }", "when: { stop-shown: full-stop }");
    assertTrue(kinds(checked).contains(FindingKind.CONTRADICTION), kinds(checked).toString());
  }

  /** Common practice, no source: a limit of three in a row. */
  @Test
  void withAnotherLimitOfTheCounterNoLogEndsInThatStop() {
    Checked checked = with("limit: 3, go: long-stop", "limit: 9, go: long-stop");
    assertEquals(
        List.of(List.of("three-in-a-row")),
        checked.report().findings().stream().map(Finding::rules).toList());
  }

  @Test
  void rulesThatRuleTheFaultOfACourseOutAreFound() {
    Checked checked =
        with(
            "        when: { stop-shown: long-stop }\n        conclude: switch-stuck-closed",
            "        when: { stop-shown: long-stop }\n        conclude: works-as-built");
    assertTrue(kinds(checked).contains(FindingKind.COURSE_DIFFERS), kinds(checked).toString());
  }

  @Test
  void aLogThatSaysOtherwiseThanGivenIsRefused() {
    Unreadable refused =
        assertThrows(
            Unreadable.class,
            () ->
                with(
                    "given: { model: MO-1, software: 2.9 }",
                    "given: { model: MO-1, software: 2.9, stop-shown: full-stop }"));
    assertEquals(
        "the log tells another value of `stop-shown` than `given`",
        refused.problems().get(0).message());
  }

  @Test
  void aLogNeedsOneMachine() {
    Unreadable refused =
        assertThrows(
            Unreadable.class,
            () -> with("given: { model: MO-1, software: 2.9 }", "given: { model: MO-1 }"));
    assertEquals(
        "a log is of one machine, and 2 builds fit what is given",
        refused.problems().get(0).message());
  }

  /** The problem of a log whose case gives a setting; the window can be set from 10 s to 1 min. */
  private static String settingRefused(String given) {
    return assertThrows(Unreadable.class, () -> checkSetting(given)).problems().get(0).message();
  }

  private static Checked checkSetting(String given) {
    return check(
        text ->
            text.replace(
                    "release-window: { title: Longest opening of the release switch, lasts: 25 s }",
                    "release-window: { title: Longest opening of the release switch, lasts: 25 s,"
                        + " set: 10 s to 1 min, reading: window-set }")
                .replace(
                    "readings:\n",
                    "readings:\n  window-set: { ask: Which window is set, unit: s, range: 0 to"
                        + " 600 }\n")
                .replace(
                    "given: { model: MO-1, software: 2.10, store-full: no }",
                    "given: { model: MO-1, software: 2.10, store-full: no, window-set: "
                        + given
                        + " }")
                .replace("until: 4:00", "until: 3:30"));
  }

  /** The switch opens at 2:38 and stays open; the log ends at 3:30. */
  @Test
  void aLogRunsWithTheSettingThatIsGiven() {
    assertEquals(new Value.Word("full-stop"), stopWith("50"));
    assertEquals(new Value.Word("none"), stopWith("60"));
  }

  private static Value stopWith(String setting) {
    var given = checkSetting(setting).knowledge().cases().get("false-stop-from-a-log").given();
    return given.readings().get("stop-shown");
  }

  @Test
  void aLogDoesNotRunWithASettingThatCannotBe() {
    assertEquals("`release-window` can be set from 10 s to 60 s, found 61 s", settingRefused("61"));
    assertEquals(
        "the log runs with `release-window` at 20.5 s, as `window-set` is given, no multiple of"
            + " the step of 1 s",
        settingRefused("20.5"));
  }

  /** The heating of its log took 88 s; a reading tells only what it can be. */
  @Test
  void whatIsOutsideTheRangeOfAReadingIsNotTold() {
    var given =
        with("unit: min, range: 0 to 10,", "unit: min, range: 1.5 to 10,")
            .knowledge()
            .cases()
            .get("false-stop-from-a-log")
            .given();
    assertEquals(new Value.Word("full-stop"), given.readings().get("stop-shown"));
    assertFalse(given.readings().containsKey("heating-minutes"));
  }
}
