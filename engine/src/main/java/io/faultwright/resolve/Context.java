package io.faultwright.resolve;

import io.faultwright.diagnostic.Problems;

/**
 * What every resolver needs.
 *
 * @param outline what is defined where
 * @param names the ids of all files
 * @param quantities reads numbers with units
 * @param problems collects what is wrong
 */
record Context(Outline outline, Names names, QuantityParser quantities, Problems problems) {
  static Context of(Outline outline, Problems problems) {
    return new Context(
        outline, new Names(outline, problems), new QuantityParser(problems), problems);
  }
}
