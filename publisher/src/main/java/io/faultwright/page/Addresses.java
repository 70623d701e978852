package io.faultwright.page;

/** Where things stand, seen from the page that links to them. */
public interface Addresses {
  /** The nearest address, on the same page where it shows the target too. */
  String href(Target target);

  /** The address of the target's own page. */
  String own(Target target);

  /** The address of a file of the site, given by its path from the site's root. */
  String file(String path);

  /** The address of a picture, given by its path in the {@code guides} folder. */
  String picture(String path);
}
