package io.faultwright.page;

import io.faultwright.model.KnowledgeBase;
import java.util.Set;

/**
 * A bulletin on its own, for paper and mail.
 *
 * @param frame head and foot; a preview is a draft
 * @param date of the revision, ISO 8601
 * @param content what it says; its links lead nowhere
 */
public record BulletinSheet(Frame frame, String date, BulletinSection content) {
  /**
   * The bulletin in the language of the handbook.
   *
   * @param preview whether nothing is released yet
   */
  public static BulletinSheet of(KnowledgeBase kb, Bulletin bulletin, boolean preview) {
    Desk desk = Desk.of(kb, new SiteAddresses("", "", Set.of()));
    return new BulletinSheet(
        Frames.of(kb.handbook(), preview),
        kb.handbook().date(),
        new BulletinSections(desk, bulletin, false).section());
  }
}
