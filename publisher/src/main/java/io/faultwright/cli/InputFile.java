package io.faultwright.cli;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.source.SourceFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** Reads the file named by {@code --input}. */
final class InputFile {
  /** The name that stands for standard input. */
  static final String STANDARD = "-";

  private static final int LARGEST = 64 * 1024 * 1024;

  private InputFile() {}

  /**
   * The file, or standard input.
   *
   * @throws Unreadable where it cannot be read, or is not UTF-8
   */
  static SourceFile read(String name, InputStream standard) {
    String shown = name.equals(STANDARD) ? "standard input" : name.replace('\\', '/');
    return SourceFile.of(shown, decode(shown, bytes(name, standard)));
  }

  private static byte[] bytes(String name, InputStream standard) {
    if (!name.equals(STANDARD)) {
      return bytes(name, () -> Files.newInputStream(Path.of(name)));
    }
    return bytes(name, () -> standard);
  }

  /**
   * The bytes of a file.
   *
   * @throws Unreadable where it cannot be read
   */
  static byte[] bytes(Path file) {
    return bytes(file.toString(), () -> Files.newInputStream(file));
  }

  private static byte[] bytes(String name, Opening opening) {
    try (InputStream in = opening.open()) {
      byte[] content = in.readNBytes(LARGEST + 1);
      if (content.length > LARGEST) {
        throw unreadable("`" + name + "` has more than 64 MB", "split it");
      }
      return content;
    } catch (IOException | InvalidPathException missing) {
      throw unreadable("the input `" + name + "` cannot be read", "check that the file is there");
    }
  }

  /** Opens what is read. */
  private interface Opening {
    InputStream open() throws IOException;
  }

  private static String decode(String name, byte[] content) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(content)).toString();
    } catch (CharacterCodingException other) {
      throw unreadable("`" + name + "` is not UTF-8 text", "save it as UTF-8");
    }
  }

  private static Unreadable unreadable(String message, String help) {
    return new Unreadable(List.of(new Problem(List.of(), message, help)));
  }
}
