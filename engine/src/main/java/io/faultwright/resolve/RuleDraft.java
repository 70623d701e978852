package io.faultwright.resolve;

import io.faultwright.model.Condition;
import io.faultwright.source.Place;

/**
 * A rule whose conditions are read, wherever they were written.
 *
 * @param definition its id and body
 * @param place where it stands
 * @param fields its keys
 * @param when its conditions
 */
record RuleDraft(Definition definition, Place place, Fields fields, Condition when) {
  String id() {
    return definition.id();
  }
}
