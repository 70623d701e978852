/**
 * Located trees to a knowledge base, in two steps: {@code Outline} collects what is defined where
 * over all files, then one resolver per section of the language reads each definition and looks its
 * references up.
 *
 * <p>Every problem of every file is found in one run. After a problem a resolver goes on with a
 * harmless stand-in (an empty text, a condition that is always true); a stand-in never leaves this
 * package, because a run with problems ends in {@code Unreadable}. An id that is defined counts as
 * known even where its definition is broken, and nothing is called unknown while a file or section
 * that might define it could not be read.
 */
package io.faultwright.resolve;
