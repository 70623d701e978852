package io.faultwright.layout;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import io.faultwright.words.Words;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A QR code (ISO/IEC 18004) with an address.
 *
 * @param address what it says
 * @param box the symbol with a quiet zone of four modules all round, in points
 * @param dark its dark modules, those side by side as one
 */
public record QrSymbol(String address, Box box, List<Box> dark) {
  /** How wide it is on a chart, in millimetres. */
  private static final double ON_CHARTS = 17;

  private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;

  /** Modules of the quiet zone on each side (ISO/IEC 18004). */
  private static final int QUIET = 4;

  /** Longer addresses would need modules too small for a worn page and a cheap camera. */
  private static final int LONGEST = 150;

  public QrSymbol {
    dark = List.copyOf(dark);
  }

  /** What it is, for those who do not see it. */
  public String alt(Words say) {
    return say.say("QR code of the online page, {0}", address);
  }

  /** The symbol of an address with its upper left corner at 0, 0; none if that is too long. */
  static Optional<QrSymbol> of(String address) {
    return of(address, ON_CHARTS);
  }

  /**
   * The symbol of an address with its upper left corner at 0, 0; none if that is too long.
   *
   * @param least how wide it is at least without its quiet zone, in millimetres
   */
  public static Optional<QrSymbol> of(String address, double least) {
    return address.getBytes(StandardCharsets.UTF_8).length > LONGEST
        ? Optional.empty()
        : Optional.of(drawn(address, matrix(address), least * POINTS_PER_MILLIMETRE));
  }

  private static ByteMatrix matrix(String address) {
    try {
      // At the level M a seventh of the symbol may be soiled.
      return Encoder.encode(address, ErrorCorrectionLevel.M).getMatrix();
    } catch (WriterException e) {
      throw new IllegalArgumentException(address, e);
    }
  }

  private static QrSymbol drawn(String address, ByteMatrix matrix, double least) {
    int count = matrix.getWidth();
    double module = Math.ceil(least / count * 100) / 100;
    List<Box> dark = new ArrayList<>();
    for (int row = 0; row < count; row++) {
      int from = 0;
      while (from < count) {
        int to = from;
        while (to < count && matrix.get(to, row) == 1) {
          to++;
        }
        if (to > from) {
          double x = (from + QUIET) * module;
          dark.add(new Box(x, (row + QUIET) * module, (to - from) * module, module));
        }
        from = to + 1;
      }
    }
    double side = Grid.up((count + 2 * QUIET) * module);
    return new QrSymbol(address, new Box(0, 0, side, side), dark);
  }

  QrSymbol shifted(double dx, double dy) {
    return new QrSymbol(
        address, box.shifted(dx, dy), dark.stream().map(module -> module.shifted(dx, dy)).toList());
  }
}
