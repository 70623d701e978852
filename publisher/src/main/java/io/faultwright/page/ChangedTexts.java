package io.faultwright.page;

import io.faultwright.model.KnowledgeBase;
import java.util.List;
import java.util.Set;

/**
 * What only says the same in other words; it stands in for a bulletin where nothing else changed.
 *
 * @param frame head and foot
 * @param since the earlier revision in words
 * @param items the things of which texts changed
 */
public record ChangedTexts(Frame frame, String since, List<BulletinSection.WorkItem> items) {
  public ChangedTexts {
    items = List.copyOf(items);
  }

  /** The texts that differ from an earlier revision. */
  public static ChangedTexts of(KnowledgeBase kb, Since since, boolean preview) {
    Desk desk = Desk.of(kb, new SiteAddresses("", "", Set.of()));
    return new ChangedTexts(
        Frames.of(kb.handbook(), preview),
        new ChangesSections(desk, since).since(),
        BulletinSections.texts(desk, since.comparison()));
  }
}
