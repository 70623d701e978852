package io.faultwright.page;

import io.faultwright.model.Handbook;
import io.faultwright.words.Words;
import java.util.Set;

/** Head and foot, the same on every page. */
public final class Frames {
  /** Languages whose usual script runs from right to left (ISO 639). */
  private static final Set<String> RIGHT_TO_LEFT =
      Set.of("ar", "arc", "dv", "fa", "he", "ku", "ps", "sd", "ug", "ur", "yi");

  private Frames() {}

  public static Frame of(Handbook handbook, boolean draft) {
    return new Frame(
        handbook.language(),
        RIGHT_TO_LEFT.contains(handbook.language().split("-")[0]) ? "rtl" : "ltr",
        handbook.title(),
        handbook.maker(),
        Words.of(handbook.language())
            .say("Revision {0}, {1}", handbook.revision(), handbook.date()),
        handbook.disclaimer(),
        handbook.hotline(),
        draft);
  }
}
