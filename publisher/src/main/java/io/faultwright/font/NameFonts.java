package io.faultwright.font;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Typefaces for names in the scripts of the world, in the order in which they are asked. */
public final class NameFonts {
  /** Each file is under the licence that lies beside it. */
  private static final List<String> FILES =
      List.of(
          "noto-sans-arabic",
          "noto-sans-hebrew",
          "noto-sans-devanagari",
          "noto-sans-bengali",
          "noto-sans-tamil",
          "noto-sans-thai",
          "noto-sans-armenian",
          "noto-sans-georgian",
          "droid-sans-fallback");

  private final List<Optional<NameFont>> read = new ArrayList<>();
  private final List<NameFont> own;
  private final NameFont bold;

  /**
   * @param own fonts of the trainer, asked after the handbook's own
   */
  public NameFonts(List<NameFont> own) {
    this.own = List.copyOf(own);
    this.bold = vendored(Fonts.bold());
    for (int i = 0; i <= FILES.size(); i++) {
      read.add(Optional.empty());
    }
  }

  private static NameFont vendored(InputStream file) {
    try (InputStream stream = file) {
      return NameFont.of(stream.readAllBytes()).orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The handbook's typeface. */
  public NameFont handbook(boolean strong) {
    return strong ? bold : at(0);
  }

  /** The first that draws all of some characters. */
  public Optional<NameFont> drawing(Collection<Integer> codePoints) {
    return all().filter(font -> codePoints.stream().allMatch(font::draws)).findFirst();
  }

  /** The handbook's, then those of the trainer, then the others. */
  private Stream<NameFont> all() {
    return Stream.concat(
        Stream.concat(Stream.of(at(0)), own.stream()),
        Stream.iterate(1, i -> i <= FILES.size(), i -> i + 1).map(this::at));
  }

  /** The handbook's typeface, then the files; each is read when it is first asked. */
  private NameFont at(int index) {
    if (read.get(index).isEmpty()) {
      InputStream file =
          index == 0
              ? Fonts.regular()
              : NameFonts.class.getResourceAsStream("names/" + FILES.get(index - 1) + ".ttf");
      read.set(index, Optional.of(vendored(file)));
    }
    return read.get(index).orElseThrow();
  }
}
