package io.faultwright.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.Sequence.Event;
import io.faultwright.resolve.Told;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TableLogTest {
  private static final String HEADER = "Time,DI1,DI2,RST,DO1,Disp,Alarm";
  private static final String CLOCK = Logs.WIDE.replace("as: date-time", "as: clock");

  /** What a log tells of inputs, as {@code step input state}. */
  private static List<String> events(LogInput log) {
    return Logs.all(log).stream()
        .filter(entry -> entry.told() instanceof Told.Happened)
        .map(
            entry -> {
              Event event = ((Told.Happened) entry.told()).event();
              return entry.step() + " " + event.input() + event.state().map(" "::concat).orElse("");
            })
        .toList();
  }

  @Test
  void rowsThatRepeatAStateAreNoEvent() {
    assertEquals(
        List.of("0 call none", "0 release-switch closed", "9 call made", "20 release-switch open"),
        events(
            Logs.table(
                CLOCK,
                HEADER,
                "8:00:00,0,0,0,0,REDY,",
                "8:00:09,1,0,0,0,REDY,",
                "8:00:10,1,0,0,0,DRAN,",
                "8:00:20,1,1,0,0,DRAN,",
                "8:00:25,1,?,0,0,DRAN,",
                "8:00:30,1,1,0,0,DRAN,")));
  }

  @Test
  void aPushIsAnEventEachTimeItIsPressedAgain() {
    assertEquals(
        List.of("1 reset-button", "4 reset-button"),
        events(
            Logs.table(
                CLOCK,
                "Time,DI1,DI2,RST,DO1,Disp",
                "0:00,,,0,,",
                "0:01,,,1,,",
                "0:02,,,1,,",
                "0:03,,,0,,",
                "0:04,,,1,,")));
  }

  @Test
  void theSeparatorIsTheHeadersAndCellsMayBeQuoted() {
    List<Entry> entries =
        Logs.all(
            Logs.table(
                Logs.WIDE,
                HEADER.replace(',', ';'),
                "",
                "\"2026-11-30T23:59:59,5\"; 1 ;0;0;0;REDY;\"a; \"\"b\"\"\"",
                "2026-12-01 00:00:01;1;1;0;0;REDY;"));
    Entry opened =
        entries.stream()
            .filter(
                entry ->
                    entry
                        .told()
                        .equals(
                            new Told.Happened(new Event("release-switch", Optional.of("open")))))
            .findFirst()
            .orElseThrow();
    assertEquals(2, opened.step());
    assertEquals("a.csv:4:23", opened.place().toString());
  }

  @Test
  void datesMayHaveAnOffsetAndAFraction() {
    assertEquals(
        List.of("0 call none", "0 release-switch closed", "2 call made"),
        events(
            Logs.table(
                Logs.WIDE,
                HEADER,
                "2026-11-30T08:00:00.250+01:00,0,0,0,0,REDY,",
                "2026-11-30T07:00:02Z,1,0,0,0,REDY,")));
  }

  @Test
  void secondsAreNumbers() {
    assertEquals(
        List.of("0 call made", "3 release-switch open"),
        events(
            Logs.table(
                CLOCK.replace("as: clock", "as: seconds"),
                HEADER,
                "100.5,1,,,,,",
                "103.1,1,1,,,,")));
  }

  /** Rows before time zero tell the states in which it begins. */
  @Test
  void aRowForEachChangeIsReadToo() {
    List<Entry> entries =
        Logs.all(
            Logs.table(
                Logs.LONG,
                "When,Tag,Val",
                "7:59:00,DI1,1",
                "7:59:00,MSG,RESET",
                "8:00:59,T1,21.5",
                "8:01:00,DO1,1",
                "8:02:00,MSG,RESET",
                "8:02:01,MSG,door light",
                "8:04:00,ST,building"));
    assertEquals(
        List.of(
            "0 call",
            "59 nothing",
            "60 heater on",
            "120 reset-button",
            "121 nothing",
            "240 phase building"),
        entries.stream().map(TableLogTest::shortly).toList());
  }

  private static String shortly(Entry entry) {
    Told told = entry.told();
    if (told instanceof Told.Happened happened) {
      return entry.step() + " " + happened.event().input();
    }
    if (told instanceof Told.OutputIs seen) {
      return entry.step() + " " + seen.output() + (seen.on() ? " on" : " off");
    }
    return entry.step()
        + (told instanceof Told.PhaseIs seen ? " phase " + seen.phase() : " nothing");
  }

  @Test
  void everyMistakeIsSaidWithItsPlace() {
    assertEquals(
        List.of(
            "[a.csv:2:27] `heater` is an output, on or off, found `2` | known here: `off`, `on`;"
                + " others go into `words` of `DO1` in the map",
            "[a.csv:3:29] no phase shows `RED` | did you mean `REDY`?",
            "[a.csv:4:1] `30.11.2026 08:00:10` in column `Time` is no time | date and time are"
                + " written `2026-11-30 22:17:27`; for others write `dates: DD.MM.YYYY` or the like",
            "[a.csv:5:1] the time goes back | sort the rows by time",
            "[a.csv:6:1] a quote is not closed | close it on the line it begins on",
            "[a.csv:7:36] the row has 9 cells, the header has 7 | put a cell that has a separator in"
                + " it in quotes",
            "[a.csv:8:1] the row has no time in column `Time` | date and time are written"
                + " `2026-11-30 22:17:27`; for others write `dates: DD.MM.YYYY` or the like"),
        Logs.wrong(
            Logs.table(
                Logs.WIDE,
                HEADER,
                "2026-11-30T08:00:00,0,0,0,2,REDY,",
                "2026-11-30 08:00:09,1,0,0,0,RED,",
                "30.11.2026 08:00:10,1,0,0,0,REDY,",
                "2026-11-30T08:00:08,1,0,0,0,REDY,",
                "2026-11-30T08:00:20,1,0,0,0,\"REDY,",
                "2026-11-30T08:00:30,1,0,0,0,REDY,,,5",
                ",1,0,0,0,REDY,")));
  }

  @Test
  void theHeaderHasToFitTheMap() {
    Unreadable unreadable =
        assertThrows(
            Unreadable.class, () -> Logs.table(CLOCK, "Tme,DI1,DI2,RST,DO1,DO1,Alarm", ""));
    assertEquals(
        List.of(
            "[a.csv:1:1] the log has no column `Disp` | known here: `Alarm`, `DI1`, `DI2`, `DO1`,"
                + " `DO1`, `RST`, `Tme`",
            "[a.csv:1:1] the log has no column `Time` | did you mean `Tme`?",
            "[a.csv:1:21] column `DO1` stands twice | rename one of the two"),
        Logs.said(unreadable));
    assertEquals(
        List.of(
            "[a.csv:1:1] the first line has none of the columns that the map names | a table begins"
                + " with a row of headings; a typed log is read without `--columns`"),
        Logs.said(assertThrows(Unreadable.class, () -> Logs.table(CLOCK, "1:28 heater on"))));
    assertEquals(
        List.of("[a.csv:1:1] the log is empty | it needs a header row, then a row for each time"),
        Logs.said(assertThrows(Unreadable.class, () -> Logs.table(CLOCK, ""))));
  }

  /** A first map often names the column and forgets its words. */
  @Test
  void aColumnWithoutWordsSaysHowTheyAreWritten() {
    String map = CLOCK.replace("DO1: { is: heater, words: { 0: off, 1: on } }", "DO1: heater");
    assertEquals(
        List.of(
            "[a.csv:2:12] `heater` is an output, on or off, found `0` | known here: `off`, `on`;"
                + " if it means one of these, write in the map `DO1: { is: heater, words: { \"0\": … } }`"),
        Logs.wrong(Logs.table(map, HEADER, "0:00,0,0,0,0,,")));
  }

  @Test
  void emptyRowsSayNothing() {
    assertEquals(
        List.of("0 call none", "9 call made"),
        events(Logs.table(CLOCK, HEADER, "0:00,0,,,,,", ",,,,,,", "0:09,1,,,,,", "\"\",,")));
  }

  @Test
  void textThatIsUtf8AllTheSameIsNotCalledMisspelt() {
    String map = "encoding: windows-1252\n" + CLOCK.replace("DI2:", "Tür:");
    assertEquals(
        List.of(
            "[a.csv:1:1] the log has no column `Tür` | the log is UTF-8: take `encoding` out of the map"),
        Logs.said(
            assertThrows(Unreadable.class, () -> Logs.table(map, HEADER.replace("DI2", "TÃ¼r")))));
  }

  @Test
  void aTableIsNoMapOfColumns() {
    Unreadable unreadable = assertThrows(Unreadable.class, () -> Logs.map("Time;DI1\n8:00;0\n"));
    assertEquals(
        List.of(
            "[map.yaml:1:1] this is no map of columns: it is a text | write `time:` and `columns:`, and below that a line for each heading"),
        Logs.said(unreadable));
  }

  @Test
  void columnsThatNobodyExplainedAreNoted() {
    LogInput log = Logs.table(CLOCK, HEADER + ",Temp", "0:00,0,0,0,0,REDY,,21");
    assertEquals("column `Temp` is left out", log.notes().get(0).message());
    assertEquals(1, log.notes().size());
  }

  @Test
  void anUnknownSignalIsAMistake() {
    assertEquals(
        List.of("[a.csv:2:9] unknown signal `DI3` | did you mean `DI1`?"),
        Logs.wrong(Logs.table(Logs.LONG, "When,Tag,Val", "8:00:00,DI3,1", "8:00:01,DI3,0")));
  }

  @Test
  void aMapSaysEveryMistakeOfItsOwn() {
    Unreadable unreadable =
        assertThrows(
            Unreadable.class,
            () ->
                Logs.map(
                    """
                    time: { column: Time, as: clok }
                    signal: Tag
                    columns:
                      A: { is: cal, words: { 0: none } }
                      B: { is: release-switch, words: { 0: close, x: open, X: closed } }
                      C: { is: heater, unknown: error }
                      D: heater
                    ignore: D
                    """));
    assertEquals(
        List.of(
            "[map.yaml:1:1] the map of columns has no `value` | add `value:`",
            "[map.yaml:1:27] a time cannot be written as `clok` | did you mean `clock`?",
            "[map.yaml:4:12] `cal` is no input, no output and none of `phase`, `display`, `event` |"
                + " did you mean `call`?",
            "[map.yaml:5:40] `release-switch` has no state `close` | did you mean `closed`?",
            "[map.yaml:5:56] cell `X` stands twice | case makes no difference; keep one of the two",
            "[map.yaml:6:29] `unknown` cannot be `error` | write `unknown: skip`, or leave it out:"
                + " unknown cells are then an error",
            "[map.yaml:7:3, map.yaml:6:3] two columns are `heater` | put one of them under"
                + " `ignore`"),
        Logs.said(unreadable));
  }

  @Test
  void timeZeroIsWrittenAsTheColumnIs() {
    Unreadable unreadable =
        assertThrows(
            Unreadable.class,
            () -> Logs.table(Logs.LONG.replace("8:00:00", "8 h"), "When,Tag,Val"));
    assertEquals("map.yaml:1:29", unreadable.problems().get(0).places().get(0).toString());
  }
}
