package io.faultwright.model;

import io.faultwright.source.Place;

/**
 * A product family.
 *
 * @param id identifier
 * @param place where it stands
 * @param title as printed
 * @param about a sentence or two
 */
public record Family(String id, Place place, String title, String about) {}
