package io.faultwright.page;

import java.util.Base64;
import java.util.Locale;
import java.util.SortedMap;

/**
 * Addresses within the one document of the book, which brings its pictures along.
 *
 * @param pictures by path in the {@code guides} folder
 */
record BookAddresses(SortedMap<String, byte[]> pictures) implements Addresses {
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

  @Override
  public String picture(String path) {
    String type = path.toLowerCase(Locale.ROOT).endsWith(".png") ? "png" : "jpeg";
    String data = Base64.getEncoder().encodeToString(pictures.get(path));
    return "data:image/" + type + ";base64," + data;
  }
}
