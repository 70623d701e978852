package io.faultwright.page;

import java.util.Set;

/**
 * Relative addresses on the site, so that it opens from any folder.
 *
 * @param folder of the language, seen from the root
 * @param page path of the page they are printed on
 * @param here what the page itself shows besides its own subject
 */
record SiteAddresses(String folder, String page, Set<Target> here) implements Addresses {
  @Override
  public String href(Target target) {
    return here.contains(target) ? "#" + target.anchor() : own(target);
  }

  @Override
  public String own(Target target) {
    return file(SitePaths.address(target));
  }

  @Override
  public String picture(String path) {
    return shared(UrlPath.encoded(SitePaths.picture(path)));
  }

  @Override
  public String file(String path) {
    return up(page) + path;
  }

  /** The address of a file that all languages share, given by its path from the root. */
  String shared(String path) {
    return up(folder + page) + path;
  }

  private static String up(String path) {
    return "../".repeat((int) path.chars().filter(c -> c == '/').count());
  }
}
