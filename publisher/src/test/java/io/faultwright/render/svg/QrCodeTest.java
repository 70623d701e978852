package io.faultwright.render.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import io.faultwright.layout.ChartLayout;
import io.faultwright.layout.ChartPage;
import io.faultwright.layout.Paper;
import io.faultwright.layout.QrSymbol;
import io.faultwright.layout.SampleCharts;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The code in the frame of a chart, read back from the drawing by the reader of ZXing. */
class QrCodeTest {
  private static final Pattern RUN =
      Pattern.compile("M([0-9.]+),([0-9.]+)h([0-9.]+)v([0-9.]+)h-[0-9.]+z");
  private static final int PIXELS_PER_POINT = 4;

  @Test
  void aReaderFindsTheAddressOnEveryPage() throws ReaderException {
    for (String address :
        List.of(
            "https://handbook.example/f/symptom/a.html",
            "https://handbook.example/walk-in-freezers/symptom/ice-untouched-electric.html",
            "https://handbook.example/" + "very-long-".repeat(9) + "/symptom/a.html")) {
      for (ChartPage page : pages(Optional.of(address))) {
        assertEquals(address, decoded(page));
        assertTrue(ChartSvg.inline(page).contains("QR code of the online page, " + address));
      }
    }
  }

  /** Fifteen millimetres are 42.5 points; the quiet zone comes on top (ISO/IEC 18004). */
  @Test
  void theCodeIsLargeEnough() {
    QrSymbol code = pages(Optional.of("https://h.example/a")).get(0).code().orElseThrow();
    double left = code.dark().stream().mapToDouble(box -> box.x()).min().orElseThrow();
    double right = code.dark().stream().mapToDouble(box -> box.right()).max().orElseThrow();
    double module = code.dark().stream().mapToDouble(box -> box.height()).min().orElseThrow();
    assertTrue(right - left >= 15 * 72 / 25.4);
    assertTrue(left - code.box().x() >= 4 * module - 1e-6);
    assertTrue(code.box().right() - right >= 4 * module - 1e-6);
  }

  @Test
  void theAddressStandsBesideAsText() {
    ChartPage page = pages(Optional.of("https://handbook.example/f/symptom/a.html")).get(0);
    assertTrue(
        page.texts().stream()
            .anyMatch(text -> text.content().equals("handbook.example/f/symptom/a.html")));
  }

  @Test
  void withoutAnAddressThereIsNoCode() {
    ChartPage page = pages(Optional.empty()).get(0);
    assertTrue(page.code().isEmpty());
    assertFalse(ChartSvg.inline(page).contains("class=\"code\""));
  }

  private static List<ChartPage> pages(Optional<String> address) {
    return new ChartLayout(SampleCharts.IMPRINT, Paper.A4).pages(SampleCharts.defrost(), address);
  }

  private static String decoded(ChartPage page) throws ReaderException {
    String svg = ChartSvg.inline(page);
    int width = page.width() * PIXELS_PER_POINT;
    int height = page.height() * PIXELS_PER_POINT;
    int[] pixels = new int[width * height];
    Arrays.fill(pixels, 0xFFFFFF);
    Matcher run = RUN.matcher(svg.substring(svg.indexOf("class=\"code\"")));
    while (run.find()) {
      int left = pixel(number(run, 1));
      int top = pixel(number(run, 2));
      int right = pixel(number(run, 1) + number(run, 3));
      int bottom = pixel(number(run, 2) + number(run, 4));
      for (int y = top; y < bottom; y++) {
        Arrays.fill(pixels, y * width + left, y * width + right, 0);
      }
    }
    RGBLuminanceSource source = new RGBLuminanceSource(width, height, pixels);
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
