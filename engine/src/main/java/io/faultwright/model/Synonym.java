package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.SortedSet;

/**
 * What people say for things that the handbook calls otherwise.
 *
 * @param text what they say
 * @param place where it stands
 * @param ids ids of the symptoms, faults, readings and parts that are meant
 */
public record Synonym(String text, Place place, SortedSet<String> ids) {
  public Synonym {
    ids = Sorted.set(ids);
  }
}
