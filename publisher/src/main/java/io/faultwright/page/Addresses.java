package io.faultwright.page;

/** Where things stand, seen from the page that links to them. */
public interface Addresses {
  /** The address to print. */
  String href(Target target);

  /** The address of a file of the site, given by its path from the site's root. */
  String file(String path);
}
