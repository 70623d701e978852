package io.faultwright.cli;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.source.SourceFile;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;

/** Reads the file named by {@code --input}. */
final class InputFile {
  /** The name that stands for standard input. */
  static final String STANDARD = "-";

  private static final String AS_UTF_8 = "save it as UTF-8";

  private static final int LARGEST = 64 * 1024 * 1024;

  private InputFile() {}

  /**
   * The file, or standard input.
   *
   * @throws Unreadable where it cannot be read, or is not UTF-8
   */
  static SourceFile read(String name, InputStream standard) {
    return SourceFile.of(shown(name), decode(shown(name), bytes(name, standard)));
  }

  /** What the input is called in messages. */
  static String shown(String name) {
    return name.equals(STANDARD) ? "standard input" : name.replace('\\', '/');
  }

  /**
   * The file, or standard input, to be read piece by piece; it must be UTF-8.
   *
   * @throws Unreadable where it cannot be read
   */
  static BufferedReader open(String name, InputStream standard) {
    return open(name, standard, StandardCharsets.UTF_8);
  }

  /** As above, in another encoding. */
  static BufferedReader open(String name, InputStream standard, Charset encoding) {
    try {
      InputStream content = name.equals(STANDARD) ? standard : Files.newInputStream(Path.of(name));
      CharsetDecoder strict = encoding.newDecoder();
      return new BufferedReader(new InputStreamReader(content, strict));
    } catch (IOException | InvalidPathException missing) {
      throw unreadable("the input `" + name + "` cannot be read", "check that the file is there");
    }
  }

  /** What is made of a file while it is read; closes it. */
  static <T> T guard(String shown, BufferedReader text, Supplier<T> work) {
    Problem notText = new Problem(List.of(), "`" + shown + "` is not UTF-8 text", AS_UTF_8);
    return guard(shown, text, notText, work);
  }

  /**
   * As above.
   *
   * @param notText what is said where it is not text in its encoding
   */
  static <T> T guard(String shown, BufferedReader text, Problem notText, Supplier<T> work) {
    try (text) {
      return work.get();
    } catch (UncheckedIOException broken) {
      throw cannotBeRead(shown, notText, broken.getCause());
    } catch (IOException broken) {
      throw cannotBeRead(shown, notText, broken);
    }
  }

  private static Unreadable cannotBeRead(String shown, Problem notText, IOException broken) {
    return broken instanceof CharacterCodingException
        ? new Unreadable(List.of(notText))
        : unreadable("the input `" + shown + "` cannot be read", "check that the file is there");
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
      throw unreadable("`" + name + "` is not UTF-8 text", AS_UTF_8);
    }
  }

  private static Unreadable unreadable(String message, String help) {
    return new Unreadable(List.of(new Problem(List.of(), message, help)));
  }
}
