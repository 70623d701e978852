package io.faultwright.syntax;

import io.faultwright.diagnostic.Problem;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/** Decodes UTF-8 and refuses anything else, with the place of the first wrong byte. */
final class Utf8 {
  /**
   * Text, or what is wrong with the bytes.
   *
   * @param file the decoded file, up to the first wrong byte
   * @param problem the first wrong byte, if there is one
   */
  record Decoded(SourceFile file, Optional<Problem> problem) {}

  private Utf8() {}

  static Decoded decode(String path, byte[] bytes) {
    ByteBuffer input = ByteBuffer.wrap(bytes);
    CharBuffer output = CharBuffer.allocate(bytes.length + 1);
    CoderResult result =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT)
            .decode(input, output, true);
    SourceFile file = SourceFile.of(path, output.flip().toString());
    return new Decoded(
        file,
        result.isError()
            ? Optional.of(problem(file, bytes[input.position()] & 0xFF))
            : Optional.empty());
  }

  private static Problem problem(SourceFile good, int wrong) {
    String text = good.text();
    int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
    int start = text.lastIndexOf('\n') + 1;
    Place place = new Place(good.path(), line, 1 + text.codePointCount(start, text.length()), 1);
    return Problem.at(
        place,
        String.format(Locale.ROOT, "the byte %02X here is not UTF-8 text", wrong),
        "save the file with the encoding UTF-8");
  }
}
