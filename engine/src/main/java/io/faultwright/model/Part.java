package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.Optional;

/**
 * A spare part.
 *
 * @param id identifier
 * @param place where it stands
 * @param title as printed
 * @param number order number
 */
public record Part(String id, Place place, String title, Optional<String> number) {}
