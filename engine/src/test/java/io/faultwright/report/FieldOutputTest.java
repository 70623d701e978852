package io.faultwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.faultwright.field.FieldBase;
import io.faultwright.field.FieldReport;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FieldOutputTest {
  /** Twelve jobs in which the leak was cold, thirty that agree, and one of each other kind. */
  private static final String TABLE =
      "symptom,model,pressure,line,room,expect,unclear,origin\n"
          + rows("weak,FL-1,1,9,0,leak,,\n", 12)
          + rows("weak,FL-1,1,4,0,dirty,,\n", 30)
          + "weak,TN-2,1,9,0,shut,,\n"
          + "weak,TN-2,7,,,leak,\"Which gauge?\u0007\",W-1\n"
          + "weak,TN-2,,,,leak,,\n"
          + "weak,TN-2,3,,,,,\n"
          + "weak,XX-1,3,,,leak,,\n"
          + "warm,TN-2,,,5,shut,,\n"
          + "warm,TN-2,,,5,escalate: the office,,\n";

  private final FieldReport report = FieldBase.report(TABLE);

  private static String rows(String row, int count) {
    return IntStream.range(0, count).mapToObj(i -> row).collect(Collectors.joining());
  }

  @Test
  void peopleReadWhereOtherFaultsWereConfirmed() {
    Golden.check(
        "field.txt",
        new FieldText(FieldBase.KB, Ink.PLAIN).write(report)
            + "\n"
            + FrequencyText.write(report.frequencies()));
  }

  @Test
  void machinesReadTheSame() throws Exception {
    String written = new FieldJson(FieldBase.KB).write(report, List.of(), true);
    Golden.check("field.json", written);
    JsonNode rows = new ObjectMapper().readTree(written).get("rows");
    assertEquals(
        rows.get("read").asLong(), rows.get("run").asLong() + rows.get("skipped").asLong());
    assertTrue(
        new ObjectMapper()
            .readTree(new FieldJson(FieldBase.KB).write(report, List.of(), false))
            .path("frequencies")
            .isMissingNode());
  }

  @Test
  void tableHasARowForEachJobThatWasRun() {
    StringWriter text = new StringWriter();
    FieldCsv rows = new FieldCsv(text);
    FieldBase.run(TABLE, rows::add);
    Golden.check("field.csv", text.toString());
    assertEquals(1 + report.counts().run(), text.toString().lines().count());
  }
}
