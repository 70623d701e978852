package io.faultwright.model;

import io.faultwright.source.Place;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What has to be done once before any of the readings that name it, for instance connecting gauges.
 *
 * @param id identifier
 * @param place where it stands
 * @param title what is done then, as printed
 * @param minutes how long it takes, once
 * @param access what has to be opened or touched for it
 */
public record SetUp(String id, Place place, String title, BigFraction minutes, Access access) {}
