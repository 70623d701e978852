package io.faultwright.sheet;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.diagnostic.Unreadable;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whatever happens to a workbook on its way, a trainer reads words and not a stack trace. */
class DamagedWorkbookTest {
  private static final int TRIES = 200;

  @Test
  void bytesThatChangedAreRefusedOrRead() {
    byte[] whole = LimitsExport.bytes(Sample.sources(Sample.TABLES), List.of(), SheetFormat.XLSX);
    Random random = new Random(20260302);
    int refused = 0;
    for (int i = 0; i < TRIES; i++) {
      byte[] damaged = whole.clone();
      for (int n = random.nextInt(6); n >= 0; n--) {
        damaged[random.nextInt(damaged.length)] = (byte) (32 + random.nextInt(96));
      }
      try {
        Sample.read(Sample.TABLES, Sample.xlsx(damaged), List.of());
      } catch (Unreadable words) {
        refused++;
      }
    }
    assertTrue(refused > TRIES / 10, "only " + refused + " were refused");
  }
}
