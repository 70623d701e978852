/** Possible situations that get no answer. */
package io.faultwright.analysis.gap;
