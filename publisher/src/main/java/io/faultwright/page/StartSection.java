package io.faultwright.page;

import io.faultwright.prose.Html;
import java.util.List;
import java.util.Optional;

/**
 * The way in.
 *
 * @param diagnosis the page that leads from check to check
 * @param search where everything is looked up
 * @param complaints every symptom, in the written order
 * @param families the symptoms by family
 * @param sequences of operation
 * @param refrigerants their tables of pressure and temperature
 * @param welcome the start guide, or nothing
 * @param changes what changed since an earlier revision, if that is told
 * @param bulletin what the field is told of this release, if anything
 * @param releases this release and those before it, if this is one
 * @param book the whole handbook as one file, if it is published
 * @param disclaimer what the handbook defers to
 * @param notes further printed lines
 */
public record StartSection(
    Link diagnosis,
    Link search,
    List<Complaint> complaints,
    List<FamilyItem> families,
    List<Link> sequences,
    List<Link> refrigerants,
    Html welcome,
    Optional<Link> changes,
    Optional<Link> bulletin,
    Optional<Link> releases,
    Optional<Link> book,
    String disclaimer,
    List<String> notes)
    implements Content {
  @Override
  public List<String> scripts() {
    return List.of(SitePaths.SEARCH_SCRIPT);
  }

  /** A symptom as the caller would say it. */
  public record Complaint(Link link, String applies) {}

  /** A family with the symptoms it can have. */
  public record FamilyItem(String title, String about, List<Link> symptoms) {}
}
