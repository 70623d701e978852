package io.faultwright.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.Sequence.Event;
import io.faultwright.resolve.Told;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TypedLogTest {
  private static List<Long> steps(String... lines) {
    return Logs.all(Logs.typed(lines)).stream().map(Entry::step).toList();
  }

  @Test
  void timesAreClocksOrNumbersWithAUnit() {
    assertEquals(
        List.of(9L, 88L, 89L, 120L, 120L, 3723L, 7200L),
        steps(
            "0:09 reset-button",
            "01:28 reset-button",
            "89 s reset-button",
            "2 min reset-button",
            "2min reset-button",
            "1:02:03 reset-button",
            "2 h reset-button"));
  }

  /** A controller looks once a step: what comes in between is seen at the next. */
  @Test
  void whatComesBetweenTwoStepsIsSeenAtTheNext() {
    assertEquals(
        List.of(88L, 89L, 89L, 89L),
        steps("1:28 end", "1:28.001 end", "88.9 s end", "89000 ms end"));
  }

  @Test
  void emptyLinesAndCommentsSayNothing() {
    List<Entry> entries =
        Logs.all(Logs.typed("# at the machine", "", "  ", "\t1:28  heater off \t # quiet now"));
    assertEquals(1, entries.size());
    assertEquals(new Told.OutputIs("heater", false), entries.get(0).told());
    assertEquals("a.log:4:8", entries.get(0).place().toString());
  }

  @Test
  void anEntryTellsAnEventOrWhatWasSeen() {
    assertEquals(
        List.of(
            new Told.Happened(new Event("release-switch", Optional.of("open"))),
            new Told.Happened(new Event("call", Optional.of("made"))),
            new Told.Happened(new Event("reset-button", Optional.empty())),
            new Told.PhaseIs("full-stop"),
            new Told.Shows("FULL"),
            new Told.OutputIs("pump", true),
            new Told.Nothing()),
        Logs.all(
                Logs.typed(
                    "1 s release-switch opens",
                    "1 s call becomes made",
                    "1 s reset-button",
                    "1 s phase full-stop",
                    "1 s shows FULL",
                    "1 s pump on",
                    "1 s end"))
            .stream()
            .map(Entry::told)
            .toList());
  }

  @Test
  void everyMistakeIsSaidWithItsPlaceAndTheNearest() {
    assertEquals(
        List.of(
            "[a.log:1:6] `heter` is no input and no output | did you mean `heater`?",
            "[a.log:2:1] `1.28` is no time | write a time such as `1:28`, `1:02:03` or `88 s`, then"
                + " what happened or was seen",
            "[a.log:3:1] the time goes back | put the entries in the order of their times",
            "[a.log:4:6] `release-switch` has no state `opns` | did you mean `opens`?",
            "[a.log:5:6] unknown phase `heatin` | did you mean `heating`?",
            "[a.log:6:6] no phase shows `HEET` | did you mean `HEAT`?",
            "[a.log:7:6] `heater` is an output, on or off, found `onn` | did you mean `on`?",
            "[a.log:8:1] a time with nothing behind it | write what happened, or `end`",
            "[a.log:9:1] `1:99` is no time | write a time such as `1:28`, `1:02:03` or `88 s`, then"
                + " what happened or was seen",
            "[a.log:10:6] something is missing behind the first word | known here: `off`, `on`"),
        Logs.wrong(
            Logs.typed(
                "1:10 heter on",
                "1.28 heater on",
                "1:05 heater off",
                "1:20 release-switch opns",
                "1:21 phase heatin",
                "1:22 shows HEET",
                "1:23 heater onn",
                "2:00",
                "1:99 heater on",
                "2:01 heater")));
  }

  @Test
  void theSameMistakeIsSaidOnceAndNotTooMany() {
    String[] lines = new String[1000];
    for (int i = 0; i < lines.length; i++) {
      lines[i] = i + " s heter on";
    }
    assertEquals(1, Logs.wrong(Logs.typed(lines)).size());
    for (int i = 0; i < lines.length; i++) {
      lines[i] = i + " s nothing-" + i;
    }
    assertEquals(20, Logs.wrong(Logs.typed(lines)).size());
  }

  @Test
  void aByteOrderMarkIsNoPartOfTheTime() {
    assertEquals(List.of(88L), steps("\uFEFF1:28 heater on"));
    assertTrue(Logs.all(Logs.typed("")).isEmpty());
  }
}
