package io.faultwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import io.faultwright.flow.Demos;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.page.Edition;
import io.faultwright.page.SitePages;
import io.faultwright.render.html.SiteHtml;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The labels for nameplates, their codes read back from the drawing by the reader of ZXing. */
class StickersTest {
  private static final Pattern LABEL =
      Pattern.compile(
          "viewBox=\"0 0 ([0-9.]+) [0-9.]+\" width=\"([0-9.]+)mm\".*?d=\"([^\"]+)\".*?plate-model\">([^<]+)",
          Pattern.DOTALL);
  private static final Pattern RUN =
      Pattern.compile("M([0-9.]+),([0-9.]+)h([0-9.]+)v([0-9.]+)h-[0-9.]+z");
  private static final int PIXELS_PER_POINT = 6;

  private static Optional<String> page(KnowledgeBase kb) {
    Edition edition =
        new Edition(new TreeMap<>(), List.of(), new TreeMap<>(), false, false, Optional.empty());
    return new SitePages(kb, edition)
        .all().stream()
            .filter(page -> page.path().equals("stickers.html"))
            .map(new SiteHtml()::print)
            .findFirst();
  }

  @Test
  void everyModelHasALabelThatOpensItsDiagnosis() throws ReaderException {
    KnowledgeBase kb = Demos.all().get(0);
    Matcher label = LABEL.matcher(page(kb).orElseThrow());
    List<String> models = new ArrayList<>();
    while (label.find()) {
      String model = label.group(4);
      models.add(model);
      assertEquals(
          "https://handbook.example/walk-in-freezers/diagnose.html?model=" + model,
          decoded(label.group(3), Double.parseDouble(label.group(1))));
      assertLargeEnough(label);
    }
    assertEquals(kb.equipment().models().keySet(), new java.util.TreeSet<>(models));
    assertEquals(kb.equipment().models().size(), models.size());
  }

  /** Twenty millimetres, a quiet zone of four modules all round, and the label is 30 mm high. */
  private static void assertLargeEnough(Matcher label) {
    double box = Double.parseDouble(label.group(1));
    double millimetres = Double.parseDouble(label.group(2));
    double left = box;
    double right = 0;
    double module = box;
    Matcher run = RUN.matcher(label.group(3));
    while (run.find()) {
      left = Math.min(left, number(run, 1));
      right = Math.max(right, number(run, 1) + number(run, 3));
      module = Math.min(module, number(run, 4));
    }
    assertTrue((right - left) / box * millimetres >= 20 - 0.01);
    assertTrue(left >= 4 * module - 0.01 && box - right >= 4 * module - 0.01);
    assertTrue(millimetres <= 29.5);
  }

  @Test
  void withoutAnAddressOfTheSiteThereAreNone() {
    assertTrue(page(SampleBook.plain()).isEmpty());
  }

  private static String decoded(String path, double box) throws ReaderException {
    int side = (int) Math.ceil(box * PIXELS_PER_POINT);
    int[] pixels = new int[side * side];
    Arrays.fill(pixels, 0xFFFFFF);
    Matcher run = RUN.matcher(path);
    while (run.find()) {
      int left = pixel(number(run, 1));
      int right = pixel(number(run, 1) + number(run, 3));
      for (int y = pixel(number(run, 2)); y < pixel(number(run, 2) + number(run, 4)); y++) {
        Arrays.fill(pixels, y * side + left, y * side + right, 0);
      }
    }
    RGBLuminanceSource source = new RGBLuminanceSource(side, side, pixels);
    BinaryBitmap bitmap = new BinaryBitmap(new HybridBinarizer(source));
    return new QRCodeReader().decode(bitmap, Map.of(DecodeHintType.TRY_HARDER, true)).getText();
  }

  private static double number(Matcher run, int group) {
    return Double.parseDouble(run.group(group));
  }

  private static int pixel(double points) {
    return (int) Math.round(points * PIXELS_PER_POINT);
  }
}
