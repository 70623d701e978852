package io.faultwright.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.resolve.Resolver;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;

class FrequencyEditTest {
  private static final FieldReport REPORT =
      FieldBase.report(
          "symptom,pressure,expect\nweak,1,dirty\nweak,1,leak\nweak,1,leak\nweak,1,shut\n");

  private static SortedMap<String, String> edited(String raw) {
    return new FrequencyEdit(FieldBase.KB, FieldBase.SOURCES, path -> raw).of(REPORT.frequencies());
  }

  @Test
  void onlyTheFiguresChange() {
    String before = FieldBase.FILE.text();
    String expected =
        before
            .replace("frequency: 3 }", "frequency: 4 }")
            .replace(
                "    title: Leak # a comment\n", "    title: Leak # a comment\n    frequency: 3\n")
            .replace("frequency: 1.5 }", "frequency: 2.5 }");
    assertEquals(expected, edited(before).get("handbook.yaml"));
  }

  @Test
  void lineEndsStayAsTheyAre() {
    String raw = "\uFEFF" + FieldBase.FILE.text().replace("\n", "\r\n");
    String after = edited(raw).get("handbook.yaml");
    assertEquals(
        edited(FieldBase.FILE.text()).get("handbook.yaml"),
        after.substring(1).replace("\r\n", "\n"));
    assertEquals(0, after.replace("\r\n", "").chars().filter(c -> c == '\n').count());
  }

  @Test
  void whatWasWrittenReadsAsItWasShown() {
    FrequencyEdit edit =
        new FrequencyEdit(FieldBase.KB, FieldBase.SOURCES, path -> FieldBase.FILE.text());
    KnowledgeBase after = Resolver.resolve(edit.after(edit.of(REPORT.frequencies())));
    FrequencyEdit.requireWritten(after, REPORT.frequencies());
    assertThrows(
        IllegalStateException.class,
        () -> FrequencyEdit.requireWritten(FieldBase.KB, REPORT.frequencies()));
  }

  @Test
  void nothingConfirmedChangesNothing() {
    FieldReport none = FieldBase.report("symptom,pressure\nweak,1\n");
    assertEquals(
        0,
        new FrequencyEdit(FieldBase.KB, FieldBase.SOURCES, path -> FieldBase.FILE.text())
            .of(none.frequencies())
            .size());
  }
}
