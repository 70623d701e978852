/** The situations of a symptom divided by what is told in them, and what a reading says of that. */
package io.faultwright.analysis.outcome;
