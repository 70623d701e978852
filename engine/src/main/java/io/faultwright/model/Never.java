package io.faultwright.model;

import io.faultwright.source.Place;

/**
 * A combination that cannot happen.
 *
 * @param id identifier
 * @param place where it stands
 * @param when the combination
 * @param because physics, or the build
 */
public record Never(String id, Place place, Condition when, String because) {}
