package io.faultwright.page;

/** Addresses within the one document of the book. */
record BookAddresses() implements Addresses {
  @Override
  public String href(Target target) {
    return "#" + target.anchor();
  }

  @Override
  public String own(Target target) {
    return href(target);
  }

  @Override
  public String file(String path) {
    return path;
  }
}
