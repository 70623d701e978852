package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.List;

/**
 * A feature in which models differ.
 *
 * @param id identifier
 * @param place where it stands
 * @param title as printed
 * @param values its named values, in the written order
 */
public record Option(String id, Place place, String title, List<NamedValue> values) {
  public Option {
    values = List.copyOf(values);
  }
}
