package io.faultwright.page;

/** The pages of a session stand alone: nothing in them leads to a file beside them. */
final class LessonAddresses implements Addresses {
  @Override
  public String href(Target target) {
    return "";
  }

  @Override
  public String own(Target target) {
    return "";
  }

  @Override
  public String file(String path) {
    return "";
  }

  @Override
  public String picture(String path) {
    return "";
  }
}
