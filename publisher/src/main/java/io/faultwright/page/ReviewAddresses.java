package io.faultwright.page;

/** Where things stand in the report for reviewers; only complaints have pages of their own. */
final class ReviewAddresses implements Addresses {
  /** The file of a complaint. */
  static String page(String symptom) {
    return "symptom-" + symptom + ".html";
  }

  @Override
  public String href(Target target) {
    return target.kind() == Target.Kind.SYMPTOM ? page(target.id()) : "index.html";
  }

  @Override
  public String own(Target target) {
    return href(target);
  }

  @Override
  public String file(String path) {
    return path;
  }

  @Override
  public String picture(String path) {
    return path;
  }
}
