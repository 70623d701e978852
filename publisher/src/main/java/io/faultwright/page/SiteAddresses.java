package io.faultwright.page;

import java.util.Set;

/**
 * Relative addresses on the site, so that it opens from any folder.
 *
 * @param page path of the page they are printed on
 * @param here what the page itself shows besides its own subject
 */
record SiteAddresses(String page, Set<Target> here) implements Addresses {
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
    return file(UrlPath.encoded(SitePaths.picture(path)));
  }

  @Override
  public String file(String path) {
    return "../".repeat((int) page.chars().filter(c -> c == '/').count()) + path;
  }
}
