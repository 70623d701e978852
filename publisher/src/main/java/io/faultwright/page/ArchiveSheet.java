package io.faultwright.page;

import io.faultwright.model.Handbook;
import io.faultwright.words.Words;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The start page of an archive of releases.
 *
 * @param frame title and language of the handbook
 * @param style address of a style sheet
 * @param items every release, the newest first
 */
public record ArchiveSheet(Frame frame, String style, List<ReleasesSection.Item> items) {
  public ArchiveSheet {
    items = List.copyOf(items);
  }

  /**
   * The page of these releases, at least one, their sites seen from the folder of the page.
   *
   * @param style address of a style sheet
   */
  public static ArchiveSheet of(Handbook handbook, List<Released> releases, String style) {
    Words say = Words.of(handbook.language());
    return new ArchiveSheet(
        Frames.of(handbook, false),
        style,
        ReleasesSections.items(releases, 0, say, UnaryOperator.identity()));
  }
}
