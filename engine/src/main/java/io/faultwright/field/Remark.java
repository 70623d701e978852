package io.faultwright.field;

import io.faultwright.source.Place;

/**
 * What a technician did not understand.
 *
 * @param symptom id of the symptom that was worked
 * @param text in the technician's words
 * @param place where the job stands
 */
public record Remark(String symptom, String text, Place place) {}
