package io.faultwright.page;

import java.util.List;

/**
 * What the field is told of a new revision.
 *
 * @param reasons why it changed, a paragraph each
 * @param language BCP 47 tag of the reasons
 * @param machines for whom an answer changed; a line for each family
 * @param changes what is answered or done otherwise
 * @param cautions what can hurt people in the work that is concerned, the gravest first
 * @param copies what to do with printed copies
 * @param texts what only says the same in other words
 */
public record BulletinSection(
    List<String> reasons,
    String language,
    List<Machines> machines,
    ChangesSection changes,
    List<CautionPanel> cautions,
    Copies copies,
    List<WorkItem> texts)
    implements Content {
  public BulletinSection {
    reasons = List.copyOf(reasons);
    machines = List.copyOf(machines);
    cautions = List.copyOf(cautions);
    texts = List.copyOf(texts);
  }

  /**
   * Equipment of one family.
   *
   * @param family its title
   * @param models ids of models that are concerned with the same software
   * @param software their versions; empty where they have none
   * @param every whether these are all versions that are published for them
   */
  public record Machines(String family, List<String> models, List<String> software, boolean every) {
    public Machines {
      models = List.copyOf(models);
      software = List.copyOf(software);
    }
  }

  /**
   * What to do with printed copies.
   *
   * @param replace charts and cards to throw away, for each of which there is a new one; a link
   *     without address where it is not published here
   * @param discard titles of those for which there is none
   * @param print those that are new
   * @param pages of the handbook that read differently, by their kind
   */
  public record Copies(
      List<Link> replace, List<String> discard, List<Link> print, List<PageGroup> pages) {
    public Copies {
      replace = List.copyOf(replace);
      discard = List.copyOf(discard);
      print = List.copyOf(print);
      pages = List.copyOf(pages);
    }

    /** Whether every printed copy is still right. */
    public boolean none() {
      return replace.isEmpty() && discard.isEmpty() && print.isEmpty() && pages.isEmpty();
    }
  }

  /**
   * Pages of the handbook of one kind.
   *
   * @param kind what they are about
   * @param titles their titles
   */
  public record PageGroup(String kind, List<String> titles) {
    public PageGroup {
      titles = List.copyOf(titles);
    }
  }

  /** A thing of which something changed, with what it was. */
  public record WorkItem(String name, String what) {}
}
