package io.faultwright.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.faultwright.diagnostic.Unreadable;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How the time of a table may be written. */
class LogTimeTest {
  private static String map(String time) {
    return """
        time: { %s }
        columns:
          DI1: { is: call, words: { 0: none, 1: made } }
        """
        .formatted(time);
  }

  /** The steps at which something is told, each once. */
  private static String steps(LogInput log) {
    return Logs.all(log).stream()
        .map(entry -> String.valueOf(entry.step()))
        .distinct()
        .collect(Collectors.joining(" "));
  }

  private static LogInput table(String time, String header, String... rows) {
    return Logs.table(
        map(time), Stream.concat(Stream.of(header), Stream.of(rows)).toArray(String[]::new));
  }

  /** By hand: 23:59:58 to 0:00:03 on the next day are 5 s, and to 12:00:00 on that one 43,202 s. */
  @Test
  void aClockThatBeginsAgainHasComeToTheNextDay() {
    assertEquals(
        "0 5 43202 86402",
        steps(
            table(
                "column: Time, over-midnight: yes",
                "Time,DI1",
                "23:59:58,0",
                "0:00:03,1",
                "12:00:00,0",
                "0:00:00,1")));
    assertEquals(
        List.of("[a.csv:3:1] the time goes back | sort the rows by time"),
        Logs.wrong(
            table("column: Time, over-midnight: yes", "Time,DI1", "23:59:58,0", "23:59:57,1")));
    assertEquals(
        List.of(
            "[a.csv:3:1] the time goes back | sort the rows by time; for a log over midnight write"
                + " `over-midnight: yes` in the map"),
        Logs.wrong(table("column: Time", "Time,DI1", "23:59:58,0", "0:00:03,1")));
  }

  @Test
  void timeZeroMayBeBeforeMidnightOrBehindIt() {
    String[] rows = {"23:59:50,0", "0:00:10,1"};
    assertEquals(
        "0 15",
        steps(table("column: Time, over-midnight: yes, zero: '23:59:55'", "Time,DI1", rows)));
    assertEquals(
        "0 20",
        steps(table("column: Time, over-midnight: yes, zero: '23:59:50'", "Time,DI1", rows)));
    assertEquals(
        "0 60",
        steps(
            table(
                "column: Time, over-midnight: yes, zero: '8:00:00'",
                "Time,DI1",
                "6:00:00,0",
                "8:01:00,1")));
    assertEquals(
        "0 8", steps(table("column: Time, over-midnight: yes, zero: '0:00:02'", "Time,DI1", rows)));
  }

  /** Each pair is 62 s apart, over the end of a day, a month or a leap day. */
  @ParameterizedTest
  @CsvSource({
    "YYYY-MM-DD, 2026-11-30 23:59:30, 2026-12-01T00:00:32",
    "DD.MM.YYYY, 30.11.2026 23:59:30, 01.12.2026 00:00:32",
    "DD.MM.YY, 28.2.28 23:59:30, 29.2.28 00:00:32",
    "MM/DD/YYYY, 2/28/2027 11:59:30 PM, 3/1/2027 12:00:32 AM",
    "DD/MM/YYYY, 31/12/2026 23:59:30, 01/01/2027 00:00:32",
    "YY-MM-DD, 26-11-30 12:59:30 pm, 26-11-30 1:00:32PM"
  })
  void datesAreWrittenInManyOrders(String dates, String first, String second) {
    assertEquals(
        "0 62",
        steps(
            table(
                "column: T, as: date-time, dates: " + dates,
                "T,DI1",
                first + ",0",
                second + ",1")));
  }

  @Test
  void aDateMayHaveAColumnOfItsOwn() {
    assertEquals(
        "0 62 120",
        steps(
            table(
                "column: Time, date: Day, dates: DD.MM.YYYY",
                "Day;Time;DI1",
                "30.11.2026;23:59:30;0",
                "\"01.12.2026\";0:00:32,0;1",
                "01.12.2026;0:01:30;0")));
    assertEquals(
        "0 30",
        steps(
            table(
                "column: Time, date: Day, zero: 2026-11-30 8:01",
                "Day,Time,DI1",
                "2026-11-30,8:00,0",
                "2026-11-30,8:01:30 AM,1")));
  }

  @Test
  void aDateThatIsNoneIsAMistake() {
    assertEquals(
        List.of(
            "[a.csv:2:1] `2026-11-30` in column `Day` is no date | dates are written 30.11.2026;"
                + " for others write `dates: DD.MM.YYYY` or the like",
            "[a.csv:3:1] `31.11.2026` in column `Day` is no date | dates are written 30.11.2026;"
                + " for others write `dates: DD.MM.YYYY` or the like",
            "[a.csv:4:1] the row has no date in column `Day` | dates are written 30.11.2026; for"
                + " others write `dates: DD.MM.YYYY` or the like",
            "[a.csv:5:12] `8 h` in column `Time` is no time | a time of the day is written `8:01`,"
                + " `20:01:09` or `8:01 PM`",
            "[a.csv:6:12] `13:00 PM` in column `Time` is no time | a time of the day is written"
                + " `8:01`, `20:01:09` or `8:01 PM`"),
        Logs.wrong(
            table(
                "column: Time, date: Day, dates: DD.MM.YYYY",
                "Day,Time,DI1",
                "2026-11-30,8:00,0",
                "31.11.2026,8:00,0",
                ",8:00,0",
                "30.11.2026,8 h,0",
                "30.11.2026,13:00 PM,0")));
  }

  @Test
  void headingsMayStandFurtherDown() {
    String[] lines = {"Tarn 20; export", "", "Unit;TN;2.10", "Time;DI1", "0:00;0", "0:07;1"};
    assertEquals("0 7", steps(Logs.table("header: 4\n" + map("column: Time"), lines)));
    assertEquals(
        List.of(
            "[a.csv:1:1] the first line has none of the columns that the map names | the headings"
                + " stand on line 4: write `header: 4` in the map"),
        Logs.said(assertThrows(Unreadable.class, () -> Logs.table(map("column: Time"), lines))));
    assertEquals(
        List.of(
            "[a.csv:6:1] the log has no headings on line 9 | it needs a header row, then a row for"
                + " each time"),
        Logs.said(
            assertThrows(
                Unreadable.class, () -> Logs.table("header: 9\n" + map("column: Time"), lines))));
  }

  @Test
  void aMapSaysWhatDoesNotFitTogether() {
    Unreadable unreadable =
        assertThrows(
            Unreadable.class,
            () ->
                Logs.map(
                    """
                    header: first
                    time:
                      column: Time
                      as: seconds
                      date: Day
                      dates: DD.MM
                      over-midnight: always
                    columns: { DI1: call }
                    """));
    assertEquals(
        List.of(
            "[map.yaml:1:9] `header` is the number of a line, found `first` | write `header: 4`"
                + " where the headings stand on the fourth line",
            "[map.yaml:5:3] a date of its own stands beside a clock, and not beside `seconds` | write"
                + " `as: clock`, or leave `date` out",
            "[map.yaml:6:10] dates cannot be written as `DD.MM` | write `YYYY-MM-DD`, `DD.MM.YYYY`,"
                + " `MM/DD/YYYY` or the like; `YY` is a short year",
            "[map.yaml:7:3] `over-midnight` is for a clock without dates | leave it out",
            "[map.yaml:7:18] `over-midnight` cannot be `always` | known here: `no`, `yes`"),
        Logs.said(unreadable));
    assertEquals(
        List.of(
            "[map.yaml:1:23] `dates` says how dates are written, and there are none | name their"
                + " column by `date`, or write `as: date-time`"),
        Logs.said(
            assertThrows(
                Unreadable.class, () -> Logs.map(map("column: Time, dates: DD.MM.YYYY")))));
  }

  @Test
  void zeroIsNoShorterThanTheColumn() {
    String map = Logs.LONG.replace("\"8:00:00\"", "\"8:00\"");
    String help =
        " | write `zero` in the map as the column is, with seconds and AM or PM where it has them";
    assertEquals(
        List.of("[a.csv:2:1] `zero` is written `8:00`, and the column `8:00:05`" + help),
        Logs.wrong(Logs.table(map, "When,Tag,Val", "8:00:05,DI1,1", "8:00:06,DI1,1")));
    assertEquals(
        List.of("[a.csv:2:1] `zero` is written `8:00:00`, and the column `8:00:05 PM`" + help),
        Logs.wrong(Logs.table(Logs.LONG, "When,Tag,Val", "8:00:05 PM,DI1,1")));
    String elapsed = Logs.LONG.replace("\"8:00:00\"", "\"0:00\"");
    assertEquals(List.of(), Logs.wrong(Logs.table(elapsed, "When,Tag,Val", "1:00:05,DI1,1")));
  }
}
