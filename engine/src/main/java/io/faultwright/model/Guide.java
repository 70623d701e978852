package io.faultwright.model;

import io.faultwright.source.Place;

/**
 * A Markdown page.
 *
 * @param id file name without its ending
 * @param place first line of the file
 * @param title its first heading, else the id
 * @param markdown the whole text
 */
public record Guide(String id, Place place, String title, String markdown) {
  /** No more of it than others need to refer to it. */
  Guide titled() {
    return new Guide(id, place, title, "");
  }
}
