package io.faultwright.analysis.quiz;

import io.faultwright.model.Difficulty;
import io.faultwright.source.Place;
import java.util.Optional;

/**
 * Something a blueprint asks for that cannot be had.
 *
 * @param place where it is asked for
 * @param symptom id; empty where it is about the whole quiz
 * @param difficulty that is asked for; absent: any
 * @param wanted how many items
 * @param found how many there are
 */
public record Shortage(
    Place place, String symptom, Optional<Difficulty> difficulty, int wanted, int found) {}
