/** The words that the tool itself prints in a handbook, in the languages it knows. */
package io.faultwright.words;
