package io.faultwright.prose;

import java.util.Optional;

/** Where the links of a text may lead. */
public interface Destinations {
  /**
   * Address of a page of the handbook; absent where there is none.
   *
   * @param kind {@code symptom}, {@code fault}, {@code reading} or {@code guide}
   * @param id id of the thing
   */
  Optional<String> page(String kind, String id);

  /**
   * Address of a picture of the knowledge base; absent where there is none.
   *
   * @param path as written, relative to the {@code guides} folder
   */
  Optional<String> picture(String path);
}
