package io.faultwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.faultwright.logbook.Followed;
import io.faultwright.logbook.LogFile;
import io.faultwright.logbook.LogInput;
import io.faultwright.logbook.Logs;
import io.faultwright.operation.HeatingCycle;
import io.faultwright.operation.Program;
import io.faultwright.resolve.LogMap;
import java.io.BufferedReader;
import java.io.StringReader;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FollowOutputTest {
  private static final String STOPPED =
      """
      Time;DI1;DI2;RST;DO1;Disp;Alarm;Temp
      2026-11-30T08:00:00.000;0;0;0;0;REDY;;21,5
      2026-11-30T08:00:09.400;1;0;0;0;REDY;;21,5
      2026-11-30T08:00:10.000;1;0;0;0;DRAN;;21,5
      2026-11-30T08:01:10.100;1;0;0;1;HEAT;;21,5
      2026-11-30T08:02:37.900;1;1;0;1;HEAT;;21,5
      2026-11-30T08:03:03.300;1;1;0;0;FULL;;21,5
      2026-11-30T08:10:00;1;0;0;0;FULL;;21,5
      2026-11-30T08:10:01;1;0;0;0;WAIT;;21,5
      2026-11-30T08:13:01;1;0;0;0;DRAN;;21,5
      """;
  private static final Program PROGRAM = HeatingCycle.on("2.9");

  private static Followed followed(String log, Optional<LogMap> map, long until) {
    LogInput input =
        LogFile.open(
            map.isPresent() ? "stopped.csv" : "noted.log",
            new BufferedReader(new StringReader(log)),
            map,
            PROGRAM);
    return Logs.follow(input, PROGRAM, 1, until);
  }

  private static Followed table() {
    return followed(STOPPED, Optional.of(Logs.map(Logs.WIDE)), 0);
  }

  private static String text(Followed followed, Ink ink) {
    return new FollowText(HeatingCycle.BASE, PROGRAM, ink).write(followed);
  }

  @Test
  void aTableIsFollowedUpToWhereItPartsAndFurther() {
    Golden.check("follow.txt", text(table(), Ink.PLAIN));
  }

  @Test
  void colourChangesNothingButColour() {
    assertEquals(
        text(table(), Ink.PLAIN), text(table(), Ink.COLOURED).replaceAll("\u001B\\[[0-9;]*m", ""));
  }

  @Test
  void machinesReadTheSame() throws Exception {
    String written = new FollowJson(HeatingCycle.BASE, PROGRAM).write(table());
    Golden.check("follow.json", written);
    JsonNode json = new ObjectMapper().readTree(written);
    assertEquals("full-stop", json.at("/outcomes/stop").asText());
  }

  @Test
  void aReasonTellsWhatHadNotHappened() {
    String text =
        text(
            followed("0:10 call becomes made\n2:38 release-switch opens", Optional.empty(), 190),
            Ink.PLAIN);
    assertTrue(
        text.contains("Release switch opened at 2:38 and had not closed 25 s later\n"), text);
    assertTrue(text.contains("  stopped        3:03 Stopped as full (full-stop)\n"), text);
    assertTrue(text.contains("there is nothing to compare"), text);
  }

  @Test
  void aReasonTellsTheCountThatReachedItsLimit() {
    String text = text(followed("0:10 call becomes made\n1 h end", Optional.empty(), 0), Ink.PLAIN);
    assertTrue(
        text.contains(
            "stop: Longest heating: 3 min over, release switch had not opened; longest heatings"
                + " in a row: 3 of 3\n"),
        text);
    assertTrue(text.contains("now waits for  Reset button, then Restart delay"), text);
    assertTrue(text.contains("counted        Longest heatings in a row: 3 of 3\n"), text);
  }
}
