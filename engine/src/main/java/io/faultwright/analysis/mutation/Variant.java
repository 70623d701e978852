package io.faultwright.analysis.mutation;

import io.faultwright.adequacy.Mutant.Operator;
import io.faultwright.source.Place;

/**
 * Something with a mistake in it.
 *
 * @param changed what it became
 * @param operator what kind of mistake
 * @param words what was changed into what
 * @param place where that stands
 * @param <T> what kind of thing
 */
record Variant<T>(T changed, Operator operator, String words, Place place) {
  <R> Variant<R> as(R other) {
    return new Variant<>(other, operator, words, place);
  }
}
